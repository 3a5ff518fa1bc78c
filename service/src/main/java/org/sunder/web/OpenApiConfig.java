package org.sunder.web;

import com.fasterxml.jackson.databind.SerializationFeature;
import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.info.Contact;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.info.License;
import io.swagger.v3.oas.models.security.SecurityRequirement;
import io.swagger.v3.oas.models.security.SecurityScheme;
import io.swagger.v3.oas.models.servers.Server;
import io.swagger.v3.oas.models.tags.Tag;
import java.util.List;
import org.springdoc.core.providers.ObjectMapperProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the specification says about the service as a whole. */
@Configuration(proxyBeanMethods = false)
class OpenApiConfig {

    OpenApiConfig(ObjectMapperProvider schemas) {
        // Words, not constants: the answers write enums by toString, and the schemas must say the same.
        schemas.jsonMapper().enable(SerializationFeature.WRITE_ENUMS_USING_TO_STRING);
    }

    @Bean
    OpenAPI description() {
        return new OpenAPI()
                .info(new Info()
                        .title("Sunder")
                        .version("1.0")
                        .description(
                                "Separation charges of high-power rockets: the physics of a joint, ground tests and"
                                        + " what they teach, what to fire next and what to fly. Someone can get hurt by a powder"
                                        + " charge: the cautions in every answer are part of it, and the range safety officer,"
                                        + " local law and the powder maker decide.")
                        .contact(new Contact().name("The Sunder developers"))
                        .license(new License().name("Apache-2.0").url("https://www.apache.org/licenses/LICENSE-2.0")))
                .servers(List.of(new Server().url("/").description("This service")))
                .components(new Components()
                        .addSecuritySchemes(
                                "accessKey",
                                new SecurityScheme()
                                        .type(SecurityScheme.Type.HTTP)
                                        .scheme("bearer")
                                        .description("An access key; not needed where keys are off.")))
                .addSecurityItem(new SecurityRequirement().addList("accessKey"))
                .tags(List.of(
                        tag("Airframes", "Rockets as built."),
                        tag("Joints and setups", "Where sections part, and how each joint is prepared."),
                        tag("Ground tests", "The log: what was fired and what it did."),
                        tag("Advice", "What the physics and the log say: estimate, next charge, flight charge."),
                        tag("Checks", "The physics alone, for anything described: nothing is stored."),
                        tag("Stock", "Powders and batches of shear pins."),
                        tag("Load-outs", "What is installed for a flight, and whether it fits."),
                        tag("Exchange", "Everything of one flyer, out and in again."),
                        tag("Pool", "What other flyers' rockets teach: sharing, snapshots, files."),
                        tag("Upkeep", "For whoever looks after the server."),
                        tag("Access", "Keys, and for whoever looks after the server the flyers.")));
    }

    private static Tag tag(String name, String description) {
        return new Tag().name(name).description(description);
    }
}
