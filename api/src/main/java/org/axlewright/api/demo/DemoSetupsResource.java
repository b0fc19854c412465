package org.axlewright.api.demo;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.axlewright.api.section.Setup;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** {@code GET /v1/demo-setups}. */
@RestController
@Tag(name = "demo")
final class DemoSetupsResource {

    private final DemoSetups demo;

    DemoSetupsResource(DemoSetups demo) {
        this.demo = demo;
    }

    /** The demo vehicles. */
    @Schema(description = "The demo vehicles.")
    record DemoList(
            @Schema(description = "Whole setups, each a valid body for every calculation.")
            List<Setup> items) {}

    @GetMapping("/v1/demo-setups")
    @Operation(
            operationId = "listDemoSetups",
            summary = "Vehicles to start from",
            description =
                    "Three invented vehicles, each as planned and as found. Each is a valid body for every calculation and for saving.")
    @ApiResponse(responseCode = "200", description = "The demo vehicles.")
    DemoList list() {
        return new DemoList(demo.all());
    }
}
