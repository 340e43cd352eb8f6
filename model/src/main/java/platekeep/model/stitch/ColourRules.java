package platekeep.model.stitch;

import java.util.ArrayList;
import java.util.List;
import platekeep.model.colour.Ciede2000;
import platekeep.model.colour.ColourVision;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;

/** Colours that are not worth their needle, that nothing is worked in, and that are hard to tell apart. */
final class ColourRules {

    /** In the order in which deficiencies are common. */
    private static final List<ColourVision> DEFICIENCIES =
            List.of(ColourVision.DEUTAN, ColourVision.PROTAN, ColourVision.TRITAN);

    private final Plate plate;
    private final CheckSettings settings;
    private final Findings findings;
    private final Floss floss;

    private ColourRules(Plate plate, CheckSettings settings, Findings findings) {
        this.plate = plate;
        this.settings = settings;
        this.findings = findings;
        this.floss = Floss.of(plate);
    }

    static void find(Plate plate, CheckSettings settings, Findings findings) {
        ColourRules rules = new ColourRules(plate, settings, findings);
        List<Character> used = new ArrayList<>();
        for (Character key : plate.palette().entries().keySet()) {
            rules.use(key);
            if (rules.floss.isUsed(key)) {
                used.add(key);
            }
        }
        for (int i = 0; i < used.size(); i++) {
            for (int j = i + 1; j < used.size(); j++) {
                rules.pair(rules.colour(used.get(i)), rules.colour(used.get(j)));
            }
        }
    }

    private Colour colour(char key) {
        return plate.palette().get(key).orElseThrow();
    }

    private void use(char key) {
        String name = colour(key).name();
        int cables = floss.cables(key);
        if (!floss.isUsed(key) && plate.hasClashes()) {
            return; // a side of an open clash may want it
        }
        if (!floss.isUsed(key)) {
            findings.inAll(
                    Severity.HINT, "unused-colour", "Nothing is worked in " + name + "; take it out of the palette.");
        } else if (cables > 0 && cables < settings.fewestCables() && !floss.isInLines(key)) {
            findings.inAll(
                    Severity.HINT,
                    "few-cables",
                    name + " is used for " + Words.count(cables, "cable") + " only and needs a needle of its own.");
        }
    }

    private void pair(Colour one, Colour other) {
        double apart = Ciede2000.difference(one.rgb(), other.rgb());
        if (apart < settings.apart()) {
            findings.inAll(Severity.WARNING, "colours-alike", names(one, other) + " are hard to tell apart on paper.");
            return;
        }
        for (ColourVision vision : DEFICIENCIES) {
            if (Ciede2000.difference(vision.seen(one.rgb()), vision.seen(other.rgb())) < settings.apartForAll()) {
                String text =
                        names(one, other) + " are hard to tell apart for people who do not see " + missing(vision);
                findings.inAll(Severity.HINT, "colours-alike-to-some", text + ".");
                return;
            }
        }
    }

    private static String missing(ColourVision vision) {
        return vision == ColourVision.PROTAN ? "red" : vision == ColourVision.DEUTAN ? "green" : "blue";
    }

    private static String names(Colour one, Colour other) {
        return one.name() + " (" + one.srgb() + ") and " + other.name() + " (" + other.srgb() + ")";
    }
}
