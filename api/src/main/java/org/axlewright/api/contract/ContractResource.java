package org.axlewright.api.contract;

import io.swagger.v3.oas.annotations.Hidden;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.function.Supplier;
import org.springframework.core.io.ClassPathResource;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.util.DigestUtils;
import org.springframework.util.function.SingletonSupplier;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * The contract that ships: {@code docs/openapi.yaml}, as it is and as JSON. It is generated when the code changes, not when the service
 * runs: that takes seconds, and a reader should not wait for it.
 */
@Hidden
@RestController
final class ContractResource {

    private final Supplier<ResponseEntity<byte[]>> yaml = SingletonSupplier.of(() -> answer(committed()));
    private final Supplier<ResponseEntity<byte[]>> json = SingletonSupplier.of(() -> answer(
            JsonMapper.shared().writeValueAsBytes(YAMLMapper.builder().build().readTree(committed()))));

    @GetMapping(path = "/v3/api-docs", produces = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<byte[]> json() {
        return json.get();
    }

    @GetMapping(path = "/v3/api-docs.yaml", produces = MediaType.APPLICATION_YAML_VALUE)
    ResponseEntity<byte[]> yaml() {
        return yaml.get();
    }

    private static byte[] committed() {
        try (InputStream contract = new ClassPathResource("contract/openapi.yaml").getInputStream()) {
            return contract.readAllBytes();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** Its tag is weak: what is compressed on the way has other bytes. */
    private static ResponseEntity<byte[]> answer(byte[] document) {
        return ResponseEntity.ok()
                .cacheControl(CacheControl.noCache())
                .eTag("W/\"" + DigestUtils.md5DigestAsHex(document) + "\"")
                .body(document);
    }
}
