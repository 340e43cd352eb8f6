package platekeep.model.join.back;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import platekeep.model.plate.Plate;

/** One thing that a plate says beside its picture, which can be copied from another plate. */
interface Fact {

    /** Whether two plates say the same. */
    boolean same(Plate one, Plate other);

    /** The plate with this as another plate says it; the same plate where that is not possible. */
    Plate copy(Plate now, Plate from);

    /** A fact that stands by itself. */
    static <T> Fact single(Function<Plate, T> get, BiFunction<Plate, T, Plate> put) {
        return new Fact() {
            @Override
            public boolean same(Plate one, Plate other) {
                return Objects.equals(get.apply(one), get.apply(other));
            }

            @Override
            public Plate copy(Plate now, Plate from) {
                return put.apply(now, get.apply(from));
            }
        };
    }

    /** One member of a list, told from the others by a key. */
    static <T> Fact member(
            Function<Plate, List<T>> get, BiFunction<Plate, List<T>, Plate> put, Function<T, String> key, String one) {
        return new Fact() {
            private Optional<T> find(Plate plate) {
                return get.apply(plate).stream()
                        .filter(t -> key.apply(t).equals(one))
                        .findFirst();
            }

            @Override
            public boolean same(Plate a, Plate b) {
                return find(a).equals(find(b));
            }

            @Override
            public Plate copy(Plate now, Plate from) {
                List<T> list = new ArrayList<>(get.apply(now));
                Optional<T> was = find(now);
                Optional<T> is = find(from);
                int at = was.map(list::indexOf).orElse(list.size());
                was.ifPresent(list::remove);
                is.ifPresent(t -> list.add(at, t));
                return put.apply(now, list);
            }
        };
    }
}
