package platekeep.client.plate.picture;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import platekeep.client.library.LibraryException;
import platekeep.client.room.Workroom;
import platekeep.client.ui.PlatePainter;
import platekeep.model.draw.ChartScale;
import platekeep.model.draw.Drawing;
import platekeep.model.draw.Svg;

/** Keeps a picture of a plate in a file of her choice. A file is written whole or not at all. */
public final class PicturePresenter {
    /** Drawings of more cables than this are slow in every program that shows them. */
    private static final int MOST_LINES = 200_000;

    private final Workroom room;
    private final PictureView view;

    PicturePresenter(Workroom room, PictureView view) {
        this.room = room;
        this.view = view;
    }

    /** Asks what the picture is to be, and keeps it. */
    public void keep(Drawing drawing) {
        if (drawing.rows() == 0) {
            room.front().trouble("This plate has no chart yet, so there is nothing to make a picture of.");
            return;
        }
        view.ask(drawing).ifPresent(wanted -> {
            Optional<String> wrong = tooLarge(drawing, wanted);
            wrong.ifPresentOrElse(
                    room.front()::trouble,
                    () -> view.askFile(name(drawing) + wanted.format().ending())
                            .ifPresent(file -> write(drawing, wanted, ended(file, wanted.format()))));
        });
    }

    /** Why a picture would be too large to be made; empty when it can be made. */
    static Optional<String> tooLarge(Drawing drawing, PictureView.Wanted wanted) {
        if (wanted.format() == Format.CHART_LINES) {
            int cables = drawing.rows() * drawing.positions();
            return cables <= MOST_LINES
                    ? Optional.empty()
                    : Optional.of("A chart of " + cables + " places is too large to be kept as lines; at most "
                            + MOST_LINES + " are. Keep it as dots instead; nothing was written.");
        }
        PlateImage.Size size = PlateImage.size(drawing, wanted.pleat());
        return size.dots() <= PlateImage.MOST_DOTS
                ? Optional.empty()
                : Optional.of("The picture would be " + size + " dots large; at most "
                        + PlateImage.MOST_DOTS / 1_000_000
                        + " million dots are written. Take fewer dots a pleat; nothing was written.");
    }

    private void write(Drawing drawing, PictureView.Wanted wanted, Path file) {
        room.work(
                progress -> {
                    put(file, bytes(drawing, wanted));
                    return file.getFileName().toString();
                },
                name -> room.front().say("Picture kept: " + name));
    }

    private static byte[] bytes(Drawing drawing, PictureView.Wanted wanted) throws LibraryException {
        if (wanted.format() == Format.CHART_LINES) {
            return Svg.chart(drawing, ChartScale.whole(wanted.pleat())).getBytes(StandardCharsets.UTF_8);
        }
        try {
            return PlateImage.png(
                    drawing,
                    wanted.pleat(),
                    wanted.format() == Format.CHART_DOTS ? PlatePainter.View.CHART : PlatePainter.View.CLOTH);
        } catch (IOException e) {
            throw new LibraryException("The picture could not be made; nothing was written.", e);
        }
    }

    private static void put(Path file, byte[] bytes) throws LibraryException {
        Path beside = file.resolveSibling(file.getFileName() + ".new");
        try {
            Files.write(beside, bytes);
            Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            discard(beside);
            throw new LibraryException(
                    "\"" + file.getFileName()
                            + "\" could not be written: is there room, and may you write in that folder?"
                            + " Choose another place; nothing was written.",
                    e);
        }
    }

    private static void discard(Path beside) {
        try {
            Files.deleteIfExists(beside);
        } catch (IOException e) {
            java.util.logging.Logger.getLogger(PicturePresenter.class.getName())
                    .log(java.util.logging.Level.WARNING, "a half-written picture stays", e);
        }
    }

    private static Path ended(Path file, Format format) {
        String name = file.getFileName().toString();
        return name.toLowerCase(Locale.ROOT).endsWith(format.ending())
                ? file
                : file.resolveSibling(name + format.ending());
    }

    /** A name for the file, of plain letters. */
    static String name(Drawing drawing) {
        String plain = Normalizer.normalize(drawing.plate().title(), Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        return plain.isEmpty() ? "plate" : plain;
    }
}
