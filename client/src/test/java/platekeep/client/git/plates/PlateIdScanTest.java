package platekeep.client.git.plates;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PlateIdScanTest {
    private static final String ID = "0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10";
    private static final String OTHER = "11111111-7c1e-4f0e-9a53-0f6c1f1f7a10";

    private static Optional<String> scan(String text) {
        return PlateIdScan.of(text.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void theIdOfTheOutermostObjectIsFoundWhereverItStands() {
        assertThat(scan("{\"format\": \"plate 1\", \"id\": \"" + ID + "\"}")).contains(ID);
        assertThat(scan("{ \"from plate\" : {\"id\": \"" + OTHER + "\"},\n \"id\" :\n\"" + ID + "\"}"))
                .contains(ID);
        assertThat(scan("{\"title\": \"a \\\"id\\\": \\\\\", \"notes\": [\"id\"], \"id\": \"" + ID + "\""))
                .contains(ID);
    }

    @Test
    void aTextWithoutAnIdHasNone() {
        assertThat(scan("")).isEmpty();
        assertThat(scan("{\"id\": \"../../etc\"}")).isEmpty();
        assertThat(scan("{\"id\": 7}")).isEmpty();
        assertThat(scan("{\"title\": \"id\\")).isEmpty();
        assertThat(scan("{\"from plate\": {\"id\": \"" + OTHER + "\"}}")).isEmpty();
    }
}
