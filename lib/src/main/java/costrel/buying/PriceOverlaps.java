package costrel.buying;

import costrel.recipe.Names;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Looks for two rows of an item that can't be told apart on some day. */
final class PriceOverlaps {

    private PriceOverlaps() {}

    /** A row by what tells it from another: supplier, minimum order, pack. */
    private record Told(PriceRow row, String supplier, int place) {
        boolean likeOf(Told other) {
            return supplier.equals(other.supplier) && PriceList.alike(row, other.row);
        }
    }

    static List<PriceList.Overlap> ofItem(List<PriceRow> rows) {
        return followOn(rows) ? List.of() : amongSorted(rows);
    }

    /** Whether each row begins after the one before it has ended, as in a list of weekly prices: then no two apply on one day. */
    private static boolean followOn(List<PriceRow> rows) {
        for (int i = 1; i < rows.size(); i++) {
            Optional<LocalDate> ended = rows.get(i - 1).validUntil();
            if (ended.isEmpty() || !rows.get(i).validFrom().isAfter(ended.get())) {
                return false;
            }
        }
        return true;
    }

    private static List<PriceList.Overlap> amongSorted(List<PriceRow> rows) {
        List<Told> told = new ArrayList<>();
        String written = "";
        String folded = "";
        for (PriceRow row : rows) {
            folded = row.supplier().equals(written) ? folded : Names.folded(row.supplier());
            written = row.supplier();
            told.add(new Told(row, folded, told.size()));
        }
        told.sort(Comparator.comparing(Told::supplier)
                .thenComparing(t -> t.row().contractQuantity().isPresent())
                .thenComparing(t -> t.row().minimumQuantity())
                .thenComparing(t -> t.row().pack().unit())
                .thenComparing(t -> t.row().pack().content())
                .thenComparing(t -> t.row().validFrom()));
        List<PriceList.Overlap> found = new ArrayList<>();
        @Nullable Told longest = null;
        for (Told next : told) {
            if (longest == null || !longest.likeOf(next)) {
                longest = next;
                continue;
            }
            if (longest.row().holdsOn(next.row().validFrom())) {
                boolean inOrder = longest.place() < next.place();
                found.add(new PriceList.Overlap(
                        inOrder ? longest.row() : next.row(), inOrder ? next.row() : longest.row()));
            }
            if (endsAfter(next.row().validUntil(), longest.row().validUntil())) {
                longest = next;
            }
        }
        return found;
    }

    private static boolean endsAfter(Optional<LocalDate> until, Optional<LocalDate> other) {
        return other.isPresent() && (until.isEmpty() || until.get().isAfter(other.get()));
    }
}
