package platekeep.client.command.collect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.command.RealMeans;
import platekeep.client.command.Shell;
import platekeep.client.command.Typed;
import platekeep.client.command.file.PlateTexts;
import platekeep.client.paper.picture.Shots;

/** Scans, series and plates carried over on the command line, on real libraries; native Git counts versions and files. */
class CollectVerbsTest {
    private static final String WENNA = "Wenna Tarrow <wenna@harbour.example>";
    private static final String LAMP = "5f0c5a44-9b1e-4a55-8f0e-2f6f4b7a9a01";
    private static final String GULL = "5f0c5a44-9b1e-4a55-8f0e-2f6f4b7a9a02";

    @TempDir
    Path home;

    private Path library;

    @BeforeEach
    void makeALibraryWithTwoPlates() throws IOException {
        library = home.resolve("patterns");
        fine(Typed.in(home, new RealMeans(home), "create", "patterns", "--name", "Ours", "--hand", WENNA));
        PlateTexts.write(home, "lamp.json", PlateTexts.LAMP);
        PlateTexts.write(
                home, "gull.json", PlateTexts.LAMP.replace(LAMP, GULL).replace("Quay Lamp", "Gull on the Quay"));
        fine(type("save", "../lamp.json", "../gull.json", "--reason", "Two for the quay"));
    }

    private void sheet(String name, int width) throws IOException {
        Files.createDirectories(home.resolve("binder"));
        Files.write(home.resolve("binder").resolve(name), Shots.written(Shots.sheet(width, 30), "png"));
    }

    @Test
    void scansOfAFolderBecomePlatesAsOneVersion() throws Exception {
        sheet("crab 2.png", 40);
        sheet("crab 10.png", 41);
        Files.writeString(home.resolve("binder").resolve("broken.png"), "no picture");
        Typed typed = type(
                "scan",
                "../binder",
                "--theme",
                "crabs",
                "--age",
                "toddler",
                "--place",
                "binder 3",
                "--use",
                "mine",
                "--json");
        assertThat(typed.exit()).as(typed.err()).isEqualTo(1);
        JsonNode json = new ObjectMapper().readTree(typed.out());
        assertThat(json.fieldNames()).toIterable().containsExactly("version", "plates", "leftOut");
        assertThat(json.get("plates").findValuesAsText("title")).containsExactly("crab 2", "crab 10");
        assertThat(json.get("leftOut").get(0).asText()).contains("broken.png");

        String list = fine(type("list", "--theme", "crabs", "--age", "toddler", "--json"))
                .out();
        assertThat(new ObjectMapper().readTree(list).findValuesAsText("rows")).containsExactly("0", "0");
        assumeTrue(Shell.hasGit());
        assertThat(git("log", "--format=%s").lines()).first().isEqualTo("2 scans brought in");
        assertThat(git("show", "--format=", "--name-only", "HEAD").lines()).hasSize(4);
        // what is there already is not brought in a second time
        assertThat(trouble(type("scan", "../binder/crab 2.png"))).contains("is in this library already");
    }

    /** Exif 2.32, 4.6.6: where a picture was taken stands in the GPS part, marked 0x8825, of the APP1 segment "Exif". */
    @Test
    void aPhotoIsPutBesideAPlateWithoutWhereItWasTaken() throws Exception {
        Files.write(home.resolve("done.jpg"), Shots.telephoneJpeg(48, 36, 1));
        fine(type("scan", "../done.jpg", "--beside", "Quay Lamp", "--photo"));
        try (var files = Files.walk(library.resolve("plates"))) {
            Path photo = files.filter(file -> file.getFileName().toString().startsWith(LAMP + ".photo-"))
                    .findFirst()
                    .orElseThrow();
            assertThat(new String(Files.readAllBytes(photo), StandardCharsets.ISO_8859_1))
                    .doesNotContain("Exif");
        }
        assertThat(trouble(type("scan", "../done.jpg", "--photo"))).contains("--beside");
        assertThat(trouble(type("scan", "../nothing.jpg"))).contains("nothing.jpg");
        assertThat(trouble(type("scan", "../done.jpg", "--use", "anything"))).contains("mine, partner, class, publish");
    }

    @Test
    void aSeriesIsBegunOrderedShownAndPutAway() throws Exception {
        fine(type("series", "Quay Days", "--begin", "--add", "Quay Lamp", "--add", "Gull on the Quay"));
        assertThat(fine(type("series")).lines()).containsExactly("Quay Days  (2 plates)", "1 series.");
        fine(type("series", "quay", "--move", "Gull on the Quay", "--place", "1"));
        assertThat(fine(type("series", "Quay Days")).lines())
                .containsExactly("Quay Days", "  1  Gull on the Quay", "  2  Quay Lamp");
        JsonNode json = new ObjectMapper()
                .readTree(fine(type("series", "Quay Days", "--json")).out());
        assertThat(json.fieldNames()).toIterable().containsExactly("id", "title", "notes", "plates");
        assertThat(json.get("plates").findValuesAsText("id")).containsExactly(GULL, LAMP);

        fine(type("series", "Quay Days", "--out", "Quay Lamp", "--rename", "Quay Weeks"));
        assertThat(fine(type("series")).lines()).first().isEqualTo("Quay Weeks  (1 plate)");
        assertThat(trouble(type("series", "Quay Weeks", "--out", "Quay Lamp"))).contains("is not in this series");
        assertThat(trouble(type("series", "Quay Weeks", "--move", "Gull on the Quay", "--place", "2")))
                .contains("from 1 to 1");
        assertThat(trouble(type("series", "Orchard"))).contains("There is no series");
        assertThat(trouble(type("series", "--add", "Quay Lamp"))).contains("Say which series");
        fine(type("series", "Quay Weeks", "--put-away"));
        assertThat(fine(type("series")).lines()).containsExactly("0 series.");
        assumeTrue(Shell.hasGit());
        assertThat(git("rev-list", "--count", "HEAD").strip()).isEqualTo("6");
    }

    @Test
    void aPlateIsCopiedAndMovedAndWhatIsDifferentThereStays() throws Exception {
        fine(Typed.in(home, new RealMeans(home), "create", "archive", "--name", "Ours", "--hand", WENNA));
        Typed looked = fine(type("carry", "Quay Lamp", "--to", "../archive", "--look"));
        assertThat(looked.out()).contains("archive (Ours)").contains("Nothing was changed.");
        fine(type("carry", "Quay Lamp", "--to", "../archive"));
        assertThat(archived()).containsExactly(LAMP);

        fine(type("tag", "Quay Lamp", "--theme", "quays"));
        Typed different = type("carry", "Quay Lamp", "--to", "../archive", "--json");
        assertThat(different.exit()).isEqualTo(1);
        JsonNode json = new ObjectMapper().readTree(different.out());
        assertThat(json.fieldNames()).toIterable().containsExactly("done", "carried", "left", "words");
        assertThat(json.get("done").asBoolean()).isFalse();
        assertThat(json.get("left").get(0).asText()).isEqualTo(LAMP);

        fine(type("carry", "Gull on the Quay", "--to", "../archive", "--move"));
        assertThat(archived()).containsExactlyInAnyOrder(LAMP, GULL);
        assertThat(fine(type("list", "--json")).out()).doesNotContain(GULL);
        assertThat(fine(type("list", "--put-away")).out()).contains("Gull on the Quay");
        assertThat(trouble(type("carry", "Quay Lamp", "--to", "."))).contains("in that library already");
    }

    private List<String> archived() throws IOException {
        String list = fine(Typed.in(home.resolve("archive"), new RealMeans(home), "list", "--json"))
                .out();
        return new ObjectMapper().readTree(list).findValuesAsText("id");
    }

    private String git(String... words) throws Exception {
        Shell.Done done = new Shell(home).git(library, words);
        assertThat(done.exit()).as(done.text()).isZero();
        return done.text();
    }

    private Typed type(String... words) {
        return Typed.in(library, new RealMeans(home), words);
    }

    private static Typed fine(Typed typed) {
        assertThat(typed.exit()).as(typed.err() + typed.out()).isZero();
        return typed;
    }

    private static String trouble(Typed typed) {
        assertThat(typed.exit()).as(typed.out()).isEqualTo(2);
        assertThat(typed.out()).isEmpty();
        assertThat(typed.err().lines()).hasSize(1);
        assertThat(typed.err()).doesNotContain("Exception").doesNotContain("inside Platekeep");
        return typed.err();
    }
}
