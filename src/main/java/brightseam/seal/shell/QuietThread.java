package brightseam.seal.shell;

import java.util.concurrent.ScheduledThreadPoolExecutor;

/**
 * A thread of its own for work at times. Its end lets work that runs finish and drops what is planned; it interrupts
 * nothing, because an interrupted write closes the database's file under everybody.
 */
final class QuietThread {

    private QuietThread() {}

    static ScheduledThreadPoolExecutor named(String name) {
        ScheduledThreadPoolExecutor thread = new ScheduledThreadPoolExecutor(
                1, work -> Thread.ofPlatform().daemon().name(name).unstarted(work));
        thread.setExecuteExistingDelayedTasksAfterShutdownPolicy(false);
        return thread;
    }
}
