package platekeep.client.command.keep;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.command.RealMeans;
import platekeep.client.command.Typed;
import platekeep.client.command.file.PlateTexts;

/** The verbs that keep a library, on a real one: each changes what it says, and nothing in trouble. */
class LibraryVerbsTest {
    private static final String WENNA = "Wenna Tarrow <wenna@harbour.example>";
    private static final String ISOLDE = "Isolde Marsh <isolde@orchard.example>";
    private static final String LAMP = "plates/q/quay-lamp.json";
    private static final String GULL = PlateTexts.LAMP
            .replace("7a9a01", "7a9a02")
            .replace("Quay Lamp", "Gull on the Quay")
            .replace("lighthouses", "gulls");

    @TempDir
    Path home;

    private Path library;

    @BeforeEach
    void makeALibraryWithTwoPlates() throws IOException {
        library = home.resolve("patterns");
        fine(Typed.in(home, new RealMeans(home), "create", "patterns", "--name", "Ours", "--hand", WENNA));
        PlateTexts.write(home, "lamp.json", PlateTexts.LAMP);
        PlateTexts.write(home, "gull.json", GULL);
        fine(type("save", "../lamp.json", "../gull.json", "--reason", "Two for the quay"));
    }

    @Test
    void listShowsEachPlate() {
        assertThat(fine(type("list")).lines())
                .containsExactly(
                        "Gull on the Quay  (12 pleats by 3 rows; gulls)  plates/g/gull-on-the-quay.json",
                        "Quay Lamp  (12 pleats by 3 rows; lighthouses)  " + LAMP,
                        "2 plates.");
    }

    @Test
    void listIsNarrowedDownByWordsThemesAndAges() {
        fine(type("tag", "Quay Lamp", "--age", "toddler"));
        assertThat(fine(type("list", "quay", "--theme", "gulls")).lines())
                .last()
                .isEqualTo("1 plate.");
        assertThat(fine(type("list", "LAMP")).out()).startsWith("Quay Lamp");
        assertThat(fine(type("list", "--age", "toddler")).out()).startsWith("Quay Lamp");
        assertThat(fine(type("list", "--age", "infant")).out()).isEqualTo("0 plates.\n");
    }

    @Test
    void listAsJsonHasTheDocumentedKeys() throws IOException {
        JsonNode json = new ObjectMapper().readTree(fine(type("list", "--json")).out());
        assertThat(json).hasSize(2);
        JsonNode lamp = json.get(1);
        assertThat(lamp.toString())
                .isEqualTo("{\"id\":\"5f0c5a44-9b1e-4a55-8f0e-2f6f4b7a9a01\",\"title\":\"Quay Lamp\",\"path\":\"" + LAMP
                        + "\",\"number\":null,\"themes\":[\"lighthouses\"],\"ages\":[],\"for\":[],"
                        + "\"pleats\":12,\"rows\":3,\"clashes\":0}");
    }

    @Test
    void likeListsPlatesThatLookLikeAFileOrAPlateOfTheLibrary() throws IOException {
        String turned = PlateTexts.LAMP.replace("5f0c5a44", "6f0c5a44").replace("\"Quay Lamp\"", "\"Other Lamp\"");
        Files.writeString(library.resolve("other.json"), turned);
        assertThat(fine(type("like", "other.json")).lines())
                .containsExactly(
                        "Gull on the Quay  (same shape, same colours)  plates/g/gull-on-the-quay.json",
                        "Quay Lamp  (same shape, same colours)  " + LAMP,
                        "2 plates.");
        JsonNode json = new ObjectMapper()
                .readTree(fine(type("like", "other.json", "--most", "1", "--json"))
                        .out());
        assertThat(json).hasSize(1);
        assertThat(json.get(0).fieldNames())
                .toIterable()
                .containsExactly("id", "title", "path", "likeness", "mirrored", "why");
        assertThat(json.get(0).get("likeness").asInt()).isEqualTo(100);
        assertThat(fine(type("like", "Quay Lamp")).out()).doesNotContain("Quay Lamp");
    }

    @Test
    void likeTakesAWholeNumberOfPlates() {
        assertThat(trouble(type("like", "Quay Lamp", "--most", "many"))).contains("from 1 to 1000");
    }

    @Test
    void theLibraryIsTheOneAroundTheCurrentFolderOrTheOneThatIsNamed() {
        Path inside = library.resolve("plates").resolve("q");
        assertThat(fine(Typed.in(inside, new RealMeans(home), "list")).lines())
                .last()
                .isEqualTo("2 plates.");
        assertThat(fine(Typed.in(home, new RealMeans(home), "list", "--library", "patterns"))
                        .lines())
                .last()
                .isEqualTo("2 plates.");
    }

    @Test
    void whereThereIsNoLibraryItIsTroubleInOneSentence() throws IOException {
        Files.createDirectory(home.resolve("empty"));
        Typed typed = Typed.in(home, new RealMeans(home), "list", "--library", "empty");
        trouble(typed);
    }

    @Test
    void aDamagedPlateIsNamedAndStopsNothingElse() throws IOException {
        Files.writeString(library.resolve(LAMP), "{\"format\": \"plate 1\"\n");
        Typed typed = type("list");
        assertThat(typed.exit()).isZero();
        assertThat(typed.out()).contains("Gull on the Quay");
    }

    @Test
    void showFindsAPlateByTitleNumberIdFileOrPartOfTheTitle() {
        for (String word :
                new String[] {"Quay Lamp", "quay lamp", "5f0c5a44-9b1e-4a55-8f0e-2f6f4b7a9a01", LAMP, "lamp", "Lamp"}) {
            assertThat(fine(type("show", word)).lines()).first().isEqualTo("Quay Lamp");
        }
    }

    @Test
    void aWordThatFitsTwoPlatesIsTroubleThatNamesThem() {
        assertThat(trouble(type("history", "quay"))).contains("Quay Lamp").contains("Gull on the Quay");
    }

    @Test
    void aPlateThatIsNotThereIsTrouble() {
        assertThat(trouble(type("history", "windmill"))).contains("windmill");
    }

    @Test
    void filesChangedByHandAreSavedAsOneVersion() throws IOException {
        String changed = PlateTexts.LAMP.replace("aa01 ...bbbbb...", "aa01 ...bbcbb...");
        Files.writeString(library.resolve(LAMP), changed);
        fine(type("save", "--reason", "A chalk dot"));
        assertThat(fine(type("history", "Quay Lamp")).lines())
                .hasSize(2)
                .first()
                .asString()
                .contains("A chalk dot");
        assertThat(fine(type("show", "Quay Lamp", "--json")).out()).isEqualTo(changed);
    }

    @Test
    void withNothingChangedThereIsNothingToSave() {
        trouble(type("save", "--reason", "Nothing"));
    }

    @Test
    void aPlateIsSavedInAnothersName() throws IOException {
        PlateTexts.write(home, "lamp.json", PlateTexts.LAMP.replace("aa01 ...bbbbb...", "aa01 ...bbcbb..."));
        fine(type("save", "../lamp.json", "--reason", "Pencilled on the print", "--by", ISOLDE));
        JsonNode newest = history("Quay Lamp").get(0);
        assertThat(newest.get("inNameOf").get("name").textValue()).isEqualTo("Isolde Marsh");
        assertThat(newest.get("enteredBy").get("name").textValue()).isEqualTo("Wenna Tarrow");
    }

    @Test
    void aFileChangedByHandIsSavedInAnothersNameToo() throws IOException {
        Path file = library.resolve(LAMP);
        Files.writeString(file, Files.readString(file).replace("aa01 ...bbbbb...", "aa01 ...bbcbb..."));
        fine(type("save", "--reason", "Pencilled on the print", "--by", ISOLDE));
        JsonNode newest = history("Quay Lamp").get(0);
        assertThat(newest.get("inNameOf").get("name").textValue()).isEqualTo("Isolde Marsh");
        assertThat(newest.get("enteredBy").get("name").textValue()).isEqualTo("Wenna Tarrow");
    }

    @Test
    void listFindsByTheTimeOfVersionsAndByTheirReasons() {
        assertThat(fine(type("list", "lamp", "since", "2001")).out()).startsWith("Quay Lamp");
        assertThat(fine(type("list", "lamp", "before", "2001")).out()).isEqualTo("0 plates.\n");
    }

    @Test
    void listFindsAsTheGalleryDoesColoursToo() {
        assertThat(fine(type("list", "brick", "lamp")).out())
                .startsWith("Quay Lamp")
                .endsWith("1 plate.\n");
        assertThat(fine(type("list", "mauve")).out()).isEqualTo("0 plates.\n");
    }

    @Test
    void tagsOfManyPlatesAreOneVersion() throws IOException {
        fine(type("tag", "Quay Lamp", "Gull on the Quay", "--theme", "seaside", "--no-theme", "gulls"));
        JsonNode json = new ObjectMapper().readTree(fine(type("list", "--json")).out());
        assertThat(json.get(0).get("themes").toString()).isEqualTo("[\"seaside\"]");
        assertThat(json.get(1).get("themes").toString()).isEqualTo("[\"lighthouses\",\"seaside\"]");
        assertThat(history("Quay Lamp").get(0).get("version"))
                .isEqualTo(history("Gull on the Quay").get(0).get("version"));
    }

    @Test
    void anAgeThatIsNoneIsTrouble() {
        assertThat(trouble(type("tag", "Quay Lamp", "--age", "teenager"))).contains("newborn, infant, toddler");
    }

    @Test
    void aVersionIsFoundByTheNameItWasGiven() throws IOException {
        String first = history("Quay Lamp").get(0).get("version").textValue();
        fine(type("tag", "Quay Lamp", "--theme", "seaside"));
        assertThat(fine(type("name", "Quay Lamp", first.substring(0, 8), "Spring class"))
                        .out())
                .contains("[Spring class]");
        assertThat(fine(type("show", "Quay Lamp", "--version", "Spring class")).out())
                .doesNotContain("seaside");
        fine(type("bring-back", "Quay Lamp", "--version", "Spring class"));
        assertThat(fine(type("show", "Quay Lamp")).out()).doesNotContain("seaside");
        assertThat(history("Quay Lamp")).hasSize(3);
    }

    @Test
    void aPlateThatWasPutAwayIsFoundAndBroughtBack() throws IOException {
        fine(type("put-away", "Quay Lamp", "--reason", "Worn out"));
        assertThat(fine(type("list")).lines()).last().isEqualTo("1 plate.");
        assertThat(library.resolve(LAMP)).doesNotExist();
        assertThat(fine(type("list", "--put-away")).out()).contains("Quay Lamp");
        assertThat(history("Quay Lamp").get(0).get("there").booleanValue()).isFalse();
        fine(type("bring-back", "Quay Lamp"));
        assertThat(library.resolve(LAMP)).hasContent(PlateTexts.LAMP);
    }

    @Test
    void aPlateThatIsThereIsNotBroughtBackWithoutAVersion() {
        trouble(type("bring-back", "Quay Lamp"));
    }

    @Test
    void theHandIsToldAndChanged() {
        assertThat(fine(type("hand")).out()).isEqualTo(WENNA + "\n");
        fine(type("hand", ISOLDE));
        assertThat(fine(type("hand")).out()).isEqualTo(ISOLDE + "\n");
        trouble(type("hand", "just a name"));
    }

    @Test
    void twoPartnersSendBringInAndJoin() throws IOException {
        fine(type("share", "../shared"));
        assertThat(fine(type("send")).out()).startsWith("Sent ");
        Path partner = home.resolve("partner");
        fine(Typed.in(home, new RealMeans(home), "create", "partner", "--from", "shared", "--hand", ISOLDE));
        PlateTexts.write(home, "theirs.json", PlateTexts.LAMP.replace("aa01 ...bbbbb...", "aa01 ...bbbcc..."));
        fine(Typed.in(partner, new RealMeans(home), "save", "../theirs.json", "--reason", "Chalk at the right"));
        fine(Typed.in(partner, new RealMeans(home), "send"));

        PlateTexts.write(home, "mine.json", PlateTexts.LAMP.replace("aa01 ...bbbbb...", "aa01 ...ccbbb..."));
        fine(type("save", "../mine.json", "--reason", "Chalk at the left"));
        trouble(type("send"));
        assertThat(fine(type("bring", "--look")).out()).contains("Quay Lamp (you changed it too):");
        assertThat(fine(type("bring")).out()).startsWith("Joined: Quay Lamp\n");
        assertThat(fine(type("show", "Quay Lamp", "--json")).out()).contains("aa01 ...ccbcc...");
        assertThat(history("Quay Lamp").get(0).get("parents")).hasSize(2);
        fine(type("send"));
        assertThat(fine(type("bring")).out()).isEqualTo("There is nothing to bring in.\n");
    }

    @Test
    void bringingInAClashSaysSoByTheExitCode() throws IOException {
        fine(type("share", "../shared"));
        fine(type("send"));
        Path partner = home.resolve("partner");
        fine(Typed.in(home, new RealMeans(home), "create", "partner", "--from", "shared", "--hand", ISOLDE));
        fine(type("tag", "Quay Lamp", "--theme", "quays"));
        PlateTexts.write(home, "theirs.json", PlateTexts.LAMP.replace("Quay Lamp", "Pier Lamp"));
        fine(Typed.in(partner, new RealMeans(home), "save", "../theirs.json", "--reason", "It is on the pier"));
        fine(Typed.in(partner, new RealMeans(home), "send"));
        PlateTexts.write(home, "mine.json", PlateTexts.LAMP.replace("Quay Lamp", "Harbour Lamp"));
        fine(type("save", "../mine.json", "--reason", "It is in the harbour"));

        Typed brought = type("bring", "--json");
        assertThat(brought.exit()).isEqualTo(1);
        JsonNode json = new ObjectMapper().readTree(brought.out());
        assertThat(json.get("clashing").toString()).isEqualTo("[\"5f0c5a44-9b1e-4a55-8f0e-2f6f4b7a9a01\"]");
        assertThat(type("check", LAMP).exit()).isEqualTo(1);
    }

    private JsonNode history(String plate) throws IOException {
        return new ObjectMapper()
                .readTree(fine(type("history", plate, "--json")).out());
    }

    private Typed type(String... words) {
        return Typed.in(library, new RealMeans(home), words);
    }

    private static Typed fine(Typed typed) {
        assertThat(typed.exit()).as(typed.err() + typed.out()).isZero();
        return typed;
    }

    private static String trouble(Typed typed) {
        assertThat(typed.exit()).isEqualTo(2);
        assertThat(typed.out()).isEmpty();
        assertThat(typed.err().lines()).hasSize(1);
        assertThat(typed.err()).doesNotContain("Exception").doesNotContain("inside Platekeep");
        return typed.err();
    }
}
