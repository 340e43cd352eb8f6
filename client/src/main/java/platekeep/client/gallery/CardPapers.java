package platekeep.client.gallery;

import java.util.Optional;
import java.util.stream.Collectors;
import platekeep.client.library.Picture;
import platekeep.client.paper.PaperShelf;
import platekeep.client.room.Workroom;
import platekeep.client.ui.PictureSource;
import platekeep.model.plate.Plate;

/**
 * The scans and photos of cards.
 *
 * @param room knows how many libraries are open
 * @param shelf knows them by plate
 */
record CardPapers(Workroom room, PaperShelf shelf) implements CardCell.Papers {
    @Override
    public Optional<PictureSource> of(Card card) {
        return card.plate()
                .filter(plate -> plate.rows().isEmpty())
                .flatMap(plate -> shelf.standingFor(folder(card), plate.id()));
    }

    @Override
    public String library(Card card) {
        return room.open().size() > 1 ? card.library() : "";
    }

    @Override
    public String beside(Card card) {
        return card.plate()
                .filter(plate -> !plate.rows().isEmpty())
                .map(plate -> words(card, plate))
                .orElse("");
    }

    private String words(Card card, Plate plate) {
        return shelf.kinds(folder(card), plate.id()).stream()
                .map(Picture.Kind::word)
                .collect(Collectors.joining(", "));
    }

    /** A card's key begins with the folder of its library. */
    private static String folder(Card card) {
        return card.key().substring(0, Math.max(0, card.key().indexOf('\n')));
    }
}
