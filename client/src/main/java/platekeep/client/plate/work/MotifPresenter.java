package platekeep.client.plate.work;

import java.security.SecureRandom;
import java.util.Optional;
import java.util.UUID;
import platekeep.client.plate.piece.Motifs;
import platekeep.client.plate.piece.Piece;
import platekeep.client.room.Place;
import platekeep.client.room.Sought;
import platekeep.client.room.Workroom;
import platekeep.model.plate.Plate;

/** Keeps what is chosen as a motif, and puts kept motifs in. */
public final class MotifPresenter {
    private final Workroom room;
    private final PlateView view;
    private final PlatePresenter plates;
    private final Motifs motifs;

    MotifPresenter(Workroom room, PlateView view, PlatePresenter plates, Motifs motifs) {
        this.room = room;
        this.view = view;
        this.plates = plates;
        this.motifs = motifs;
    }

    /** Keeps what is chosen under a name. */
    public void keep() {
        plates.choice()
                .chosen()
                .ifPresent(piece -> view.askMotifName().ifPresent(name -> {
                    Plate motif = piece.plate(UUID.randomUUID().toString(), name, new SecureRandom());
                    room.work(
                            progress -> {
                                motifs.keep(motif);
                                return motif;
                            },
                            kept -> room.front().say("Kept as a motif: " + kept.title()));
                }));
    }

    /** Searches for plates that contain what is chosen. */
    public void find() {
        plates.current()
                .ifPresent(opened -> plates.choice().chosen().ifPresent(piece -> {
                    String from = opened.now().title();
                    Plate motif = piece.plate(UUID.randomUUID().toString(), from, new SecureRandom());
                    room.go(new Place.Search(new Sought.WithMotif(motif, from)));
                }));
    }

    /** Puts a kept motif in at the cursor, once one is chosen. */
    public void put() {
        plates.drawable()
                .ifPresent(opened -> room.work(progress -> motifs.all(), all -> {
                    if (all.isEmpty()) {
                        room.front().say("No motif is kept yet. Choose a part of a picture and keep it as a motif.");
                        return;
                    }
                    view.askMotif(all).ifPresent(answer -> {
                        Plate motif = all.get(answer.number());
                        if (answer.what() == PlateView.MotifAnswer.What.FORGET) {
                            forget(motif);
                        } else {
                            Optional<Piece> piece = Piece.of(motif);
                            piece.ifPresent(plates.choice()::paste);
                        }
                    });
                }));
    }

    private void forget(Plate motif) {
        room.work(
                progress -> {
                    motifs.forget(motif);
                    return motif;
                },
                gone -> room.front().say("No longer kept: " + gone.title()));
    }
}
