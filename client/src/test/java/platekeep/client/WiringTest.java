package platekeep.client;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.GraphicsEnvironment;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.Icon;
import javax.swing.JLabel;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.plate.TestPlates;
import platekeep.client.room.Place;
import platekeep.client.room.RoomListener;
import platekeep.client.room.Screen;
import platekeep.client.room.Sought;
import platekeep.client.room.TestRoom;
import platekeep.client.window.LaterScreen;

class WiringTest {
    @TempDir
    private Path folder;

    private TestRoom test;
    private List<Screen> screens;
    private List<Place> places;

    @BeforeEach
    void putTogether() {
        test = new TestRoom(folder);
        test.open();
        screens = new Wiring(test.libraries, folder).screens(test.room);
        places = List.of(
                new Place.Gallery(),
                new Place.OnePlate(test.library, "no plate"),
                new Place.InPlate(
                        test.library,
                        "no plate",
                        TestPlates.block("00000000-0000-4000-8000-000000000001", "Kite"),
                        List.of(List.of())),
                new Place.Compare(side("a"), side("b")),
                new Place.Join(test.library, Optional.empty()),
                new Place.Partner(test.library),
                new Place.Paper(List.of()),
                new Place.OneSeries(test.library, "no series"),
                new Place.InSeries(test.library, "no plate"),
                new Place.Search(new Sought.Doubles()));
    }

    private Place.Side side(String plateId) {
        return new Place.Side(test.library, plateId, Optional.empty(), "");
    }

    @Test
    void everyPlaceHasOneScreen() {
        assertThat(places.stream().map(Object::getClass)).contains(Place.class.getPermittedSubclasses());
        for (Place place : places) {
            assertThat(screens.stream().filter(screen -> screen.takes(place)))
                    .as(place.toString())
                    .hasSize(1);
        }
    }

    @Test
    void whatIsSaidOfAScreenThatIsMadeLaterIsTrue() {
        for (Screen screen : screens) {
            // plates are dragged on the Series screen, which needs a display
            boolean canBeMade = !screen.word().equals("Series") || !GraphicsEnvironment.isHeadless();
            if (screen instanceof LaterScreen later && canBeMade) {
                Screen made = later.made();
                assertThat(made.word()).isEqualTo(later.word());
                assertThat(dots(made.icon())).isEqualTo(dots(later.icon()));
                for (Place place : places) {
                    assertThat(made.takes(place)).as(later.word() + place).isEqualTo(later.takes(place));
                }
            }
        }
    }

    private static int[] dots(Icon icon) {
        BufferedImage picture =
                new BufferedImage(icon.getIconWidth(), icon.getIconHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = picture.createGraphics();
        icon.paintIcon(new JLabel(), g, 0, 0);
        g.dispose();
        return picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth());
    }

    @Test
    void whoComesIntoTheRoomLaterHearsWhatIsOpen() {
        StringBuilder heard = new StringBuilder();
        RoomListener before = new RoomListener() {
            @Override
            public void librariesChanged() {
                heard.append("before ");
            }
        };
        test.room.listen(before);
        String made = test.room.joined(() -> {
            test.room.listen(new RoomListener() {
                @Override
                public void librariesChanged() {
                    heard.append("later ").append(test.room.open().size());
                }
            });
            return "made";
        });
        assertThat(made).isEqualTo("made");
        assertThat(heard).hasToString("later 1");
    }
}
