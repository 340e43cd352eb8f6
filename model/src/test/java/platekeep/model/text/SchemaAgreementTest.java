package platekeep.model.text;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import platekeep.model.plate.Plate;

/**
 * The shipped schemas (JSON Schema draft 2020-12) and the reader refuse the same texts, apart from rules that no schema
 * can hold. The schemas are judged by networknt's validator, which knows nothing of the reader.
 */
class SchemaAgreementTest {

    /** A kind of text: a sound one that uses all of its schema, the schema and the reader. */
    enum Kind {
        PLATE("plate-1", "/every-key.json", PlateText::read),
        SERIES("series-1", "/series.json", SeriesText::read),
        LIBRARY("library-1", "/library.json", LibraryText::read);

        private final JsonNode schemaText;
        private final Schema schema;
        private final String sound;
        private final BiFunction<String, byte[], Reading<?>> reader;

        Kind(String schemaName, String soundResource, BiFunction<String, byte[], Reading<?>> reader) {
            String text = resource("/platekeep/model/text/" + schemaName + ".schema.json");
            this.schemaText = Faults.tree(text);
            this.schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(text, InputFormat.JSON);
            this.sound = resource(soundResource);
            this.reader = reader;
        }

        /** Texts with one fault each; clashes are tried one by one in a small plate, as there are many kinds of them. */
        private List<Faults.Fault> faults() {
            ObjectNode whole = (ObjectNode) Faults.tree(sound);
            JsonNode clashes = whole.remove("clashes");
            List<Faults.Fault> faults = new ArrayList<>(Faults.of(whole.toString(), ""));
            if (clashes != null) {
                whole.retain(
                        "format", "id", "title", "themes", "ages", "designers", "notes", "colours", "pleats", "rows");
                clashes.forEach(clash -> {
                    whole.putArray("clashes").add(clash);
                    faults.addAll(Faults.of(whole.toString(), "/clashes"));
                });
            }
            String format = whole.get("format").textValue();
            for (String newer : List.of("2", "9", "10", "123456789012")) {
                faults.add(new Faults.Fault("format " + newer, sound.replace(format, format.replace("1", newer))));
            }
            if (whole.has("rows")) {
                for (int i = whole.get("rows").size(); i <= Plate.MOST_ROWS; i++) {
                    whole.withArray("rows").add(whole.get("rows").get(0));
                }
                faults.add(new Faults.Fault("a row too many", whole.toString()));
            }
            return faults;
        }

        /** The ids of the rules that the reader refuses the text for. */
        private Set<String> readerRules(String text) {
            return reader.apply("file.json", text.getBytes(StandardCharsets.UTF_8))
                    .fold(good -> Set.of(), bad -> ids(bad.problems()));
        }

        /** The ids of the rules that the schema refuses the text for, from the comments beside the constraints. */
        private Set<String> schemaRules(String text) {
            return schema.validate(text, InputFormat.JSON).stream()
                    .map(error ->
                            comment(error.getSchemaLocation().getFragment().toString()))
                    .collect(Collectors.toCollection(TreeSet::new));
        }

        private String comment(String fragment) {
            String constraint = fragment.substring(0, fragment.lastIndexOf('/'));
            return schemaText.at(constraint).path("$comment").asText("no comment at " + fragment);
        }
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void theSchemaItselfIsAValidSchema(Kind kind) {
        Schema meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of(SpecificationVersion.DRAFT_2020_12.getDialectId()));

        assertThat(meta.validate(kind.schemaText.toString(), InputFormat.JSON)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void aSoundTextIsGoodToBothAndCanonical(Kind kind) {
        assertThat(kind.readerRules(kind.sound)).isEmpty();
        assertThat(kind.schemaRules(kind.sound)).isEmpty();
        assertThat(kind.reader
                        .apply("file.json", kind.sound.getBytes(StandardCharsets.UTF_8))
                        .<List<Problem>>fold(good -> good.mended(), bad -> bad.problems()))
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    @Timeout(600)
    void whatOneRefusesTheOtherRefusesAndForTheSameRule(Kind kind) {
        List<String> disagreements = new ArrayList<>();
        Set<String> seen = new TreeSet<>();
        List<Faults.Fault> faults = kind.faults();
        for (Faults.Fault fault : faults) {
            Set<String> reader = kind.readerRules(fault.text());
            Set<String> schema = kind.schemaRules(fault.text());
            Set<String> shared = new TreeSet<>(reader);
            shared.removeAll(ids(Rule.Reach.BEYOND_SCHEMA));
            if (!schema.containsAll(shared) || shared.isEmpty() != schema.isEmpty()) {
                disagreements.add(fault.name() + ": reader " + reader + ", schema " + schema);
            }
            seen.addAll(schema);
        }

        assertThat(disagreements).isEmpty();
        assertThat(faults).hasSizeGreaterThan(100);
        assertThat(seen).as("every rule in the schema was broken by some fault").containsAll(rulesIn(kind));
    }

    @Test
    void everyRuleThatASchemaCanHoldStandsInASchema() {
        Set<String> inSchemas =
                Stream.of(Kind.values()).flatMap(kind -> rulesIn(kind).stream()).collect(Collectors.toSet());

        assertThat(inSchemas).isEqualTo(ids(Rule.Reach.SCHEMA));
    }

    /** The rules that comments in a schema name; a comment is a rule's id and nothing else. */
    private static Set<String> rulesIn(Kind kind) {
        return new TreeSet<>(kind.schemaText.findValuesAsText("$comment"));
    }

    private static Set<String> ids(Rule.Reach reach) {
        return EnumSet.allOf(Rule.class).stream()
                .filter(rule -> rule.reach() == reach)
                .map(Rule::id)
                .collect(Collectors.toSet());
    }

    private static Set<String> ids(List<Problem> problems) {
        return problems.stream().map(Problem::rule).collect(Collectors.toCollection(TreeSet::new));
    }

    private static String resource(String name) {
        try (InputStream in = SchemaAgreementTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
