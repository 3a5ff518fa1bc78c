package org.sunder.access.web;

import jakarta.servlet.DispatcherType;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpMethod;
import org.springframework.security.authentication.AuthenticationManager;
import org.springframework.security.authentication.AuthenticationServiceException;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.annotation.web.configurers.AuthorizeHttpRequestsConfigurer;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.AnonymousAuthenticationFilter;
import org.springframework.security.web.header.HeaderWriterFilter;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.sunder.access.AccessKeys;
import org.sunder.access.AccessSettings;
import org.sunder.access.Scope;
import org.sunder.problem.ProblemWriter;

/** What each key may do. Whatever is not named is refused. */
@Configuration(proxyBeanMethods = false)
class AccessRules {

    private static final String[] OPEN = {
        "/livez",
        "/readyz",
        "/actuator/health/**",
        "/problems/*",
        "/sign-in",
        "/assets/**",
        "/manifest.webmanifest",
        "/worker.js",
        "/favicon.ico",
        "/v3/api-docs/**",
        "/v3/api-docs.yaml",
        "/swagger-ui.html",
        "/swagger-ui/**"
    };
    private static final String[] PAGES = {
        "/",
        "/field/**",
        "/airframes/**",
        "/joints/**",
        "/fleet",
        "/fleet/**",
        "/stock",
        "/stock/**",
        "/import",
        "/terms",
        "/pool",
        "/pool/*",
        "/phone",
        "/sign-out",
        "/actuator/prometheus"
    };
    private static final String[] CHANGING = {
        "/joints/*/copy",
        "/joints/*/remove",
        "/airframes/*/copy",
        "/airframes/*/load-outs/*/copy",
        "/airframes/*/bring-back",
        "/airframes/*/remove",
        "/pool/*",
        "/phone",
        "/phone/end"
    };
    private static final String[] LOGGING = {
        "/api/joints/*/ground-tests", "/api/joints/*/flight-events", "/joints/*/films"
    };
    private static final String[] LOOKING_AFTER = {"/api/flyers", "/api/flyers/**", "/api/backup"};

    @Bean
    Limits limits(AccessSettings settings) {
        return new Limits(settings);
    }

    @Bean
    SecurityFilterChain access(
            HttpSecurity http, AccessSettings settings, AccessKeys keys, Limits limits, ProblemWriter problems) {
        Refusals refusals = new Refusals(problems);
        return http.csrf(AbstractHttpConfigurer::disable) // the origin filter refuses what comes from elsewhere
                .sessionManagement(sessions -> sessions.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .requestCache(AbstractHttpConfigurer::disable)
                .logout(AbstractHttpConfigurer::disable)
                .headers(headers -> headers.cacheControl(HeadersConfigurer.CacheControlConfig::disable)
                        .referrerPolicy(policy -> policy.policy(ReferrerPolicy.NO_REFERRER))
                        .addHeaderWriter(new PolicyHeaders()))
                .exceptionHandling(
                        failures -> failures.authenticationEntryPoint(refusals).accessDeniedHandler(refusals))
                .authorizeHttpRequests(AccessRules::rules)
                .addFilterAfter(new OriginFilter(settings, problems), HeaderWriterFilter.class)
                .addFilterBefore(new KeyFilter(settings, keys, limits, problems), AnonymousAuthenticationFilter.class)
                .build();
    }

    /** No passwords: keys are looked up by the key filter. */
    @Bean
    AuthenticationManager noPasswords() {
        return authentication -> {
            throw new AuthenticationServiceException("only access keys are known here");
        };
    }

    private static void rules(
            AuthorizeHttpRequestsConfigurer<HttpSecurity>.AuthorizationManagerRequestMatcherRegistry allow) {
        String admin = Scope.ADMIN.name();
        String full = Scope.FULL.name();
        String logOnly = Scope.LOG_ONLY.name();
        allow.dispatcherTypeMatchers(DispatcherType.ERROR, DispatcherType.FORWARD, DispatcherType.ASYNC)
                .permitAll()
                .requestMatchers(OPEN)
                .permitAll()
                .requestMatchers(LOOKING_AFTER)
                .hasAuthority(admin)
                .requestMatchers("/api/access-keys", "/api/access-keys/**")
                .hasAnyAuthority(admin, full)
                .requestMatchers(HttpMethod.POST, "/api/pool/snapshots", "/api/pool/renew", "/pool/renew")
                .hasAuthority(admin)
                .requestMatchers(HttpMethod.GET, "/api/**")
                .authenticated()
                .requestMatchers(HttpMethod.HEAD, "/api/**")
                .authenticated()
                .requestMatchers(HttpMethod.POST, "/api/checks/*")
                .authenticated()
                .requestMatchers(HttpMethod.POST, LOGGING)
                .hasAnyAuthority(admin, full, logOnly)
                .requestMatchers(HttpMethod.PUT, "/api/ground-tests/*/photo", "/api/filming")
                .hasAnyAuthority(admin, full, logOnly)
                .requestMatchers("/api/**", "/example", "/example/**")
                .hasAnyAuthority(admin, full)
                .requestMatchers(HttpMethod.POST, CHANGING)
                .hasAnyAuthority(admin, full)
                .requestMatchers(PAGES)
                .authenticated()
                .anyRequest()
                .denyAll();
    }
}
