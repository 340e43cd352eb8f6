package platekeep.model.stitch;

import java.util.List;
import platekeep.model.plate.Plate;

/**
 * What makes trouble in a plate, found before anybody threads a needle.
 *
 * <table>
 * <caption>The rules by their lasting names</caption>
 * <tr><td>{@code open-clash}</td><td>a join left it open</td></tr>
 * <tr><td>{@code start-without-row}, {@code mark-without-row}, {@code remark-without-row}</td>
 *     <td>it names a row that is not there</td></tr>
 * <tr><td>{@code starts-disagree}</td><td>two starts on one figure make its cables different</td></tr>
 * <tr><td>{@code start-without-cable}</td><td>no cable lies where it says that stitching starts</td></tr>
 * <tr><td>{@code lone-cable}</td><td>a cable that holds to no other</td></tr>
 * <tr><td>{@code loose-part}</td><td>a part of a figure that touches but does not hold together with the rest</td></tr>
 * <tr><td>{@code overhang}</td><td>a run that hangs too far beyond the row it rests on</td></tr>
 * <tr><td>{@code carried-thread}</td><td>a thread carried behind too many pleats within a figure</td></tr>
 * <tr><td>{@code blank-row}</td><td>one blank row between two figures whose pleats overlap</td></tr>
 * <tr><td>{@code few-cables}</td><td>a colour for fewer cables than are worth a needle</td></tr>
 * <tr><td>{@code unused-colour}</td><td>a colour of the palette that nothing is worked in</td></tr>
 * <tr><td>{@code colours-alike}</td><td>two colours that are hard to tell apart</td></tr>
 * <tr><td>{@code colours-alike-to-some}</td><td>the same for people with a colour-vision deficiency</td></tr>
 * </table>
 *
 * <p>A figure with one trouble in many places gives one finding, at the worst place, that counts the others.
 */
public final class Check {

    private Check() {}

    /**
     * All findings, the weightiest first, then from the bottom and from the left. Linear in the cells of the chart, and in
     * the square of the number of colours.
     */
    public static List<Finding> of(Plate plate, CheckSettings settings) {
        return of(plate, Kinds.of(plate), settings);
    }

    /**
     * As {@link #of(Plate, CheckSettings)} where up and down are known already.
     *
     * @param kinds of the same plate
     */
    public static List<Finding> of(Plate plate, Kinds kinds, CheckSettings settings) {
        Findings findings = new Findings(plate);
        ClashRule.find(plate, findings);
        PlaceRules.find(plate, kinds, findings);
        HoldingRules.find(plate, kinds, findings);
        OverhangRule.find(plate, kinds, settings, findings);
        ThreadRules.find(plate, kinds, settings, findings);
        ColourRules.find(plate, settings, findings);
        return findings.list();
    }
}
