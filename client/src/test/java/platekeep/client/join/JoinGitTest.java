package platekeep.client.join;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.library.Library;
import platekeep.client.library.Version;
import platekeep.client.task.Progress;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;

/** Deciding on the Join screen over two real libraries with a shared copy between them. */
class JoinGitTest {
    private static final Plate KITE = new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10", "Kite")
            .palette(Palette.EMPTY
                    .with('b', new Colour("brick", "#A63C2B", 4))
                    .with('c', new Colour("chalk", "#F4F1E8", 4))
                    .with('y', new Colour("lamp yellow", "#E9B83C", 4)))
            .pleats(Optional.of(new Pleats(1, 9)))
            .rows(List.of(Row.of("r2r2", "..bbbb.."), Row.of("r1r1", "..bbbb..")))
            .build();

    private static Plate kite(String title, String top, String bottom) {
        return KITE.edit()
                .title(title)
                .rows(List.of(Row.of("r2r2", top), Row.of("r1r1", bottom)))
                .build();
    }

    @TempDir
    private Path root;

    private final RecordingJoinView view = new RecordingJoinView();

    @Test
    void theJoinAndTheDecisionsAreOneVersionAndBothHaveTheSameBytesAfterSending() throws Exception {
        try (TwoDesks desks = new TwoDesks(root, KITE)) {
            desks.bothChange(
                    List.of(kite("Kite at night", "..yyyy..", "..bbbb..")),
                    List.of(kite("Kite", "..cccc..", "..bbcc..")));
            Version mine = desks.wenna.newest().orElseThrow();
            Version theirs = desks.isolde.newest().orElseThrow();
            JoinPresenter join = desks.sit(view);
            join.entered();
            Library here = TwoDesks.of(join);
            join.show(here, Optional.empty());
            assertThat(view.board().answers())
                    .extracting(Board.Answer::who)
                    .containsExactly("Before", "Yours", "Isolde Marsh");
            assertThat(here.newest()).contains(mine);
            join.answer(2);
            join.save();
            Version saved = here.newest().orElseThrow();
            assertThat(saved.parents()).containsExactly(mine.id(), theirs.id());
            Plate now = here.plate(KITE.id()).orElseThrow().plate().orElseThrow();
            assertThat(now).isEqualTo(kite("Kite at night", "..cccc..", "..bbcc.."));
            here.send(Progress.NONE);
            desks.isolde.bringIn(desks.isolde.look(Progress.NONE), List.of(), Progress.NONE);
            assertThat(desks.isolde.newest()).contains(saved);
            assertThat(Files.readAllBytes(root.resolve("isolde/plates/k/kite.json")))
                    .isEqualTo(Files.readAllBytes(root.resolve("wenna/plates/k/kite.json")));
        }
    }

    @Test
    void whatIsDecidedSurvivesTheEndOfTheProgramAndLaterKeepsTheRestAsData() throws Exception {
        try (TwoDesks desks = new TwoDesks(root, KITE)) {
            desks.bothChange(
                    List.of(kite("Kite at night", "..yyyy..", "..yybb..")),
                    List.of(kite("Kite", "..cccc..", "..bbcc..")
                            .edit()
                            .title("Kite by day")
                            .build()));
            JoinPresenter before = desks.sit(view);
            before.entered();
            before.show(TwoDesks.of(before), Optional.empty());
            before.answer(1);
            int open = view.board().open();
            RecordingJoinView next = new RecordingJoinView();
            JoinPresenter after = desks.sit(next);
            after.entered();
            assertThat(next.board().open()).isEqualTo(open);
            next.consent = JoinView.Consent.YES;
            after.save();
            Plate now = desks.now(KITE);
            assertThat(now.rows()).extracting(Row::cells).contains("..yyyy..");
            assertThat(now.clashes()).extracting(Clash::what).containsOnly(Clash.What.FIELD);
            assertThat(desks.wenna.newest().orElseThrow().isJoin()).isTrue();
        }
    }
}
