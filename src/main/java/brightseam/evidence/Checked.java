package brightseam.evidence;

import java.util.function.Function;

/** What a check came to. */
sealed interface Checked<T> {

    /** It fits, and this follows. */
    record Right<T>(T value) implements Checked<T> {}

    /** It does not fit. */
    record Wrong<T>(Misfit misfit) implements Checked<T> {}

    /** The next check, where this one fits. */
    default <U> Checked<U> then(Function<? super T, Checked<U>> next) {
        return switch (this) {
            case Right<T> right -> next.apply(right.value());
            case Wrong<T> wrong -> new Wrong<>(wrong.misfit());
        };
    }
}
