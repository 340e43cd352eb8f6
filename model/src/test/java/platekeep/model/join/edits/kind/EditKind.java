package platekeep.model.join.edits.kind;

import java.util.function.Consumer;

/** What designers do to a plate. */
public enum EditKind {
    RECOLOUR(CableEdits::recolour),
    DRAW(CableEdits::draw),
    ERASE(CableEdits::erase),
    REDRAW_ROW(CableEdits::redrawRow),
    PATCH(CableEdits::patch),
    SCATTER(CableEdits::scatter),
    BOTH_ENDS(CableEdits::bothHalvesOfARow),
    INSERT(RowEdits::insert),
    INSERT_COPY(RowEdits::insertCopy),
    INSERT_BLANK(RowEdits::insertBlank),
    DELETE(RowEdits::delete),
    DELETE_SEVERAL(RowEdits::deleteSeveral),
    MOVE_ROW(RowEdits::moveRow),
    LIFT_SAME_IDS(RowEdits::liftSameIds),
    LIFT_FRESH_IDS(RowEdits::liftFreshIds),
    WIDEN_LEFT(ShapeEdits::widenLeft),
    WIDEN_RIGHT(ShapeEdits::widenRight),
    WIDEN_AND_DRAW(ShapeEdits::widenAndDraw),
    DRAW_AT_EDGE(ShapeEdits::drawAtEdge),
    NARROW(ShapeEdits::narrowBlank),
    CUT(ShapeEdits::cutCables),
    SHIFT(ShapeEdits::shift),
    MIRROR(ShapeEdits::mirror),
    UPSIDE_DOWN(ShapeEdits::upsideDown),
    FIGURE_SIDEWAYS(ShapeEdits::figureSideways),
    FIGURE_LIFTED(ShapeEdits::figureLifted),
    FIGURE_MIRRORED(ShapeEdits::figureMirrored),
    CHANGE_COLOUR(ColourEdits::changeEntry),
    ADD_COLOUR(ColourEdits::addUnused),
    ADD_COLOUR_AND_PAINT(ColourEdits::addAndPaint),
    RENAME_KEY(ColourEdits::renameKey),
    SWAP_KEYS(ColourEdits::swapKeys),
    POUR_COLOUR(ColourEdits::pour),
    EXCHANGE_THREADS(ColourEdits::exchangeThreads),
    DROP_UNUSED(ColourEdits::dropUnused),
    DROP_USED(ColourEdits::dropUsed),
    PAINT_WITH_UNUSED(ColourEdits::paintWithUnused),
    ERASE_COLOUR_HERE(ColourEdits::eraseColourHere),
    RETITLE(FactEdits::retitle),
    FIELD(FactEdits::field),
    THEMES(FactEdits::themes),
    USES(FactEdits::uses),
    AGES(FactEdits::ages),
    NOTES(FactEdits::notes),
    DESIGNERS(FactEdits::designers),
    LINES(FactEdits::lines),
    NOTIONS(FactEdits::notions),
    MARKS(FactEdits::marks),
    REMARKS(FactEdits::remarks),
    START_TURNED(StartEdits::turn),
    START_ON(StartEdits::gatheringRow),
    START_ELSEWHERE(StartEdits::elsewhere),
    START_ROW_GONE(StartEdits::rowGone),
    START_ERASED(StartEdits::cableErased),
    START_ADDED(StartEdits::added),
    NOTHING(s -> {});

    private final Consumer<Studio> edit;

    EditKind(Consumer<Studio> edit) {
        this.edit = edit;
    }

    /** Whether it needs several figures, each with a start of its own. */
    public boolean needsFigures() {
        return name().startsWith("FIGURE");
    }

    /** Notes the edit in the studio's change; throws {@code Undetermined} where there is nothing to do it on. */
    public void make(Studio studio) {
        edit.accept(studio);
    }
}
