package platekeep.client.command.partner;

import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.file.ReadablePlate;
import platekeep.client.command.keep.LibraryVerb;
import platekeep.client.command.words.About;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Sent;
import platekeep.client.task.Progress;
import platekeep.model.plate.Value;

/** Sends all versions to the shared copy. */
public final class SendVerb extends LibraryVerb {

    public SendVerb(Desk desk) {
        super(desk, About.of("send", "Sends your versions to the shared copy.", "platekeep send --library patterns"));
    }

    @Override
    protected int answer(Library library) throws LibraryException {
        Sent sent = library.send(Progress.NONE);
        if (asJson()) {
            sayJson(new Value.Builder().put("versions", sent.versions()).build());
        } else {
            say(
                    sent.versions() == 0
                            ? "The shared copy has all your versions already."
                            : "Sent " + ReadablePlate.count(sent.versions(), "version") + ".");
        }
        return Exit.FINE;
    }
}
