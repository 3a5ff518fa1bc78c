package org.sunder.advice.web;

import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.Parameters;
import io.swagger.v3.oas.annotations.enums.ParameterIn;
import io.swagger.v3.oas.annotations.media.Schema;
import jakarta.validation.Constraint;
import jakarta.validation.Payload;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The width of a picture in px: one that a screen or a sheet may have. */
@Target(ElementType.PARAMETER)
@Retention(RetentionPolicy.RUNTIME)
@Constraint(validatedBy = {})
@Min(value = 240, message = PictureWidth.ALLOWED) @Max(value = 2000, message = PictureWidth.ALLOWED) @interface PictureWidth {

    String ALLOWED = "240 to 2000";
    String USUAL = "640";

    String message() default ALLOWED;

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};

    /** The same as the parameter of an operation whose JSON does not need it, and whose picture does. */
    @Target(ElementType.METHOD)
    @Retention(RetentionPolicy.RUNTIME)
    @Parameters(
            @Parameter(
                    in = ParameterIn.QUERY,
                    name = "width",
                    description = "Width of the picture in px: " + ALLOWED + ".",
                    schema = @Schema(type = "integer", minimum = "240", maximum = "2000", defaultValue = USUAL)))
    @interface Described {}
}
