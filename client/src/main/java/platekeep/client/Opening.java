package platekeep.client;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.logging.Level;
import java.util.logging.Logger;
import platekeep.client.command.desk.Trouble;
import platekeep.client.task.Tasks;

/** Opens a window on the event thread and waits until it is there, so that a failure is told and not lost there. */
final class Opening {

    private Opening() {}

    /** Does it and comes back when it is done; whatever goes wrong is logged and told in a sentence. */
    static void wait(Tasks tasks, Runnable opening) throws Trouble {
        CompletableFuture<Boolean> open = new CompletableFuture<>();
        tasks.onEventThread(() -> {
            try {
                opening.run();
                open.complete(true);
            } catch (RuntimeException | Error e) {
                open.completeExceptionally(e);
            }
        });
        try {
            open.get();
        } catch (ExecutionException e) {
            Logger.getLogger(Opening.class.getName()).log(Level.SEVERE, "the window did not open", e.getCause());
            throw new Trouble("The window could not be opened. Your libraries are untouched; what happened is written"
                    + " down in the log, and \"platekeep --help\" tells what works without a window.");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Trouble("The window was given up before it was open.");
        }
    }
}
