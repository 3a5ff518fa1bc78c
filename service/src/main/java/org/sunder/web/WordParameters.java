package org.sunder.web;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.convert.converter.Converter;
import org.springframework.core.convert.converter.ConverterFactory;
import org.springframework.format.FormatterRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.sunder.engine.quantity.Decimals;

/** Words in query parameters are the words of the API, not constants of the code; numbers are bounded. */
@Configuration(proxyBeanMethods = false)
class WordParameters implements WebMvcConfigurer {

    @Override
    public void addFormatters(FormatterRegistry registry) {
        registry.addConverterFactory(new Words());
        registry.addConverter(
                String.class,
                BigDecimal.class,
                text -> Decimals.find(text).orElseThrow(() -> new IllegalArgumentException(Decimals.ALLOWED)));
    }

    @SuppressWarnings("rawtypes")
    private static final class Words implements ConverterFactory<String, Enum> {

        @Override
        public <T extends Enum> Converter<String, T> getConverter(Class<T> type) {
            return text -> Arrays.stream(type.getEnumConstants())
                    .filter(constant -> constant.toString().equals(text))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException(Arrays.stream(type.getEnumConstants())
                            .map(String::valueOf)
                            .collect(Collectors.joining(", "))));
        }
    }
}
