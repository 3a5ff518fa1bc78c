package org.sunder.json;

import org.springframework.boot.jackson.autoconfigure.JsonMapperBuilderCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.sunder.problem.Fault;
import org.sunder.problem.InputFaults;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.cfg.CoercionAction;
import tools.jackson.databind.cfg.CoercionInputShape;
import tools.jackson.databind.cfg.DateTimeFeature;
import tools.jackson.databind.cfg.JsonNodeFeature;
import tools.jackson.databind.type.LogicalType;

/** How bodies are read and written: strict, exact decimals, times with their offset. */
@Configuration(proxyBeanMethods = false)
class JsonConfig {

    @Bean
    JsonMapperBuilderCustomizer strictJson() {
        FaultSink sink = (pointer, detail, code, allowed, value) ->
                InputFaults.add(new Fault(pointer, detail, code, allowed, value));
        return builder -> builder.enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
                .disable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                .disable(DateTimeFeature.ADJUST_DATES_TO_CONTEXT_TIME_ZONE)
                .disable(DateTimeFeature.WRITE_DATES_AS_TIMESTAMPS)
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .withCoercionConfig(
                        LogicalType.Enum,
                        coercion -> coercion.setCoercion(CoercionInputShape.Integer, CoercionAction.Fail))
                .addHandler(new GatheringFaults(sink))
                .addModule(new QuantityModule(sink))
                .addModule(new ScalarModule(sink));
    }
}
