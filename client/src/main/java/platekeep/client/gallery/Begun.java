package platekeep.client.gallery;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import platekeep.client.draft.KeptDraft;
import platekeep.client.library.Entry;
import platekeep.client.plate.begin.BlankChart;
import platekeep.model.find.Summary;
import platekeep.model.find.Surroundings;
import platekeep.model.plate.FromPlate;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.State;
import platekeep.model.stitch.RowIds;

/** Plates that are begun here, and how those that are in no version yet appear among the others. */
final class Begun {
    /** A few colours that stand well beside each other, to begin with. */
    static final Palette FIRST_COLOURS = BlankChart.FIRST_COLOURS;

    private Begun() {}

    /** An empty chart. */
    static Plate blank(String id, GalleryView.NewPlate asked, Palette palette, List<String> designers) {
        Pleats pleats = new Pleats(1, asked.pleats());
        String cells = String.valueOf(Row.EMPTY).repeat(pleats.positions());
        return new platekeep.model.plate.Draft(id, asked.title())
                .state(Optional.of(State.IDEA))
                .designers(designers)
                .palette(palette)
                .pleats(Optional.of(pleats))
                .rows(rows(asked.rows(), cells))
                .build();
    }

    private static List<Row> rows(int count, String cells) {
        Set<RowId> taken = new HashSet<>();
        java.util.Random random = new java.security.SecureRandom();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            RowId id = RowIds.fresh(taken, random);
            taken.add(id);
            rows.add(new Row(Optional.of(id), cells));
        }
        return rows;
    }

    /** A copy that remembers which plate and version it came from; its remarks stay with the old one. */
    static Plate from(String id, Plate plate, Optional<String> version) {
        return plate.edit()
                .id(id)
                .title(plate.title() + ", new")
                .number(Optional.empty())
                .state(Optional.of(State.IDEA))
                .fromPlate(version.map(v -> new FromPlate(plate.id(), v, platekeep.model.plate.Unknown.NONE)))
                .remarks(List.of())
                .clashes(List.of())
                .build();
    }

    /** A library's plates, with those among them that are in no version yet. */
    static List<Stock.Item> withDrafts(Stock stock, List<KeptDraft> drafts) {
        Set<String> there = stock.items().stream()
                .flatMap(item -> item.plate().stream())
                .map(Plate::id)
                .collect(Collectors.toSet());
        List<Stock.Item> all = new ArrayList<>();
        drafts.stream()
                .filter(draft -> !there.contains(draft.plate().id()))
                .map(draft -> begun(stock, draft))
                .forEach(all::add);
        all.addAll(stock.items());
        return all;
    }

    private static Stock.Item begun(Stock stock, KeptDraft draft) {
        Plate plate = draft.plate();
        String content = plate.id() + draft.on();
        return new Stock.Item(
                stock.library(),
                new Entry.Good("drafts/" + plate.id(), content, plate),
                Optional.of(Summary.of(stock.library().folder() + "\ndrafts/" + plate.id(), plate, Surroundings.NONE)));
    }
}
