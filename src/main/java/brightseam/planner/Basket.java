package brightseam.planner;

import brightseam.kernel.KitId;
import java.util.List;
import java.util.Optional;

/**
 * One basket and what is still before it.
 *
 * @param label what people call it; no two of a problem are the same
 * @param kit the kit that its pieces are for, where there is one
 * @param progress where it is now
 * @param earliestStartSeconds nothing of it begins before
 * @param stages the stage in progress, where there is one, and all that follow, at least one
 * @param window the clean window of its pieces, where one matters
 */
public record Basket(
        String label,
        Optional<KitId> kit,
        Progress progress,
        int earliestStartSeconds,
        List<Stage> stages,
        Optional<PartWindow> window) {

    /** Copies the stages; refuses a basket without any. */
    public Basket {
        stages = List.copyOf(stages);
        if (stages.isEmpty()) {
            throw new IllegalArgumentException(label + ": nothing left to plan");
        }
    }

    /** Whether its first stage has begun. */
    public boolean isInStage() {
        return progress instanceof Progress.InStage;
    }

    /** Whether it may stay where it is: nothing has begun and no gap is running. */
    public boolean mayStay() {
        return progress instanceof Progress.Waiting waiting && waiting.latestStartSeconds().isEmpty();
    }

    /** Number of the last stage. */
    public int last() {
        return stages.size() - 1;
    }

    /** The same with other stages. */
    public Basket withStages(List<Stage> others) {
        return new Basket(label, kit, progress, earliestStartSeconds, others, window);
    }

    /** The same standing elsewhere. */
    public Basket withProgress(Progress other) {
        return new Basket(label, kit, other, earliestStartSeconds, stages, window);
    }

    /** The same with another window, or with none. */
    public Basket withWindow(Optional<PartWindow> other) {
        return new Basket(label, kit, progress, earliestStartSeconds, stages, other);
    }

    /** Whether {@code other} is the same but for its label, so that one may take the other's place in a plan. */
    public boolean isLike(Basket other) {
        return kit.equals(other.kit) && progress.equals(other.progress) && stages.equals(other.stages)
                && earliestStartSeconds == other.earliestStartSeconds && window.equals(other.window);
    }
}
