package platekeep.model.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

class SvgTest {
    private static final Plate PLATE = new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10", "Rock & <Rope>")
            .palette(Palette.EMPTY
                    .with('b', new Colour("brick", "#A63C2B", 4))
                    .with('c', new Colour("chalk", "#F4F1E8", 4)))
            .pleats(Optional.of(new Pleats(7, 14)))
            .rows(List.of(Row.of("r3r3", ".bccb.."), Row.of("r2r2", "bb.bbcc"), Row.of("r1r1", "cbcbcbb")))
            .starts(List.of(new Start(new RowId("r1r1"), 7, CableKind.UP)))
            .build();

    private static Document read(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    /** Read back by the platform's XML reader: for each cable one bar of its colour at its very place, and no other. */
    @Test
    void everyCableIsABarOfItsColourWhereTheGeometrySays() throws Exception {
        Drawing drawing = Drawing.of(PLATE);
        ChartScale scale = ChartScale.whole(13);
        NodeList bars = read(Svg.chart(drawing, scale)).getElementsByTagName("use");
        int cables = 0;
        for (int row = 0; row < drawing.rows(); row++) {
            for (int i = 0; i < drawing.positions(); i++) {
                if (drawing.rgb(row, i) != Drawing.NOTHING) {
                    cables++;
                    assertThat(shadeAt(bars, scale.left(i), scale.top(row, drawing.kind(row, i))))
                            .as("row %d, position %d", row, i)
                            .isEqualTo(String.format("#%06X", drawing.rgb(row, i)));
                }
            }
        }
        assertThat(bars.getLength()).isEqualTo(cables);
    }

    private static String shadeAt(NodeList bars, double x, double y) {
        String shade = "";
        for (int n = 0; n < bars.getLength(); n++) {
            Element bar = (Element) bars.item(n);
            boolean isThere =
                    Double.parseDouble(bar.getAttribute("x")) == x && Double.parseDouble(bar.getAttribute("y")) == y;
            shade = isThere ? ((Element) bar.getParentNode()).getAttribute("fill") : shade;
        }
        return shade;
    }

    @Test
    void titlesAreWrittenSoThatTheyAreOnlyText() throws Exception {
        assertThat(read(Svg.chart(Drawing.of(PLATE), ChartScale.whole(9)))
                        .getElementsByTagName("title")
                        .item(0)
                        .getTextContent())
                .isEqualTo("Rock & <Rope>");
    }

    @Test
    void pleatsAreNumberedAsTheChartHasThem() throws Exception {
        NodeList texts = read(Svg.chart(Drawing.of(PLATE), ChartScale.whole(9))).getElementsByTagName("text");
        assertThat(texts.item(0).getTextContent()).isEqualTo("10");
        assertThat(((Element) texts.item(0)).getAttribute("x")).isEqualTo("31.5");
    }
}
