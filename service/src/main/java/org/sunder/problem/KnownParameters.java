package org.sunder.problem;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Set;
import java.util.TreeSet;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.MethodParameter;
import org.springframework.util.StringUtils;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Refuses a query parameter that an operation does not know: a misspelt one would be ignored in silence. */
@Configuration(proxyBeanMethods = false)
class KnownParameters implements WebMvcConfigurer, HandlerInterceptor {

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(this).addPathPatterns("/api/**");
    }

    @Override
    public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler) {
        if (handler instanceof HandlerMethod method) {
            Set<String> known = new TreeSet<>();
            for (MethodParameter parameter : method.getMethodParameters()) {
                RequestParam declared = parameter.getParameterAnnotation(RequestParam.class);
                if (declared != null) {
                    known.add(StringUtils.hasText(declared.name()) ? declared.name() : name(method, parameter));
                }
            }
            for (String asked : request.getParameterMap().keySet()) {
                if (!known.contains(asked)) {
                    String allowed = known.isEmpty() ? "no query parameters" : String.join(", ", known);
                    throw ProblemException.invalid(asked, asked, "unknown query parameter " + asked, allowed);
                }
            }
        }
        return true;
    }

    private static String name(HandlerMethod method, MethodParameter parameter) {
        return method.getMethod().getParameters()[parameter.getParameterIndex()].getName();
    }
}
