package platekeep.client.git.history;

import java.util.List;
import java.util.stream.Stream;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.revwalk.RevCommit;
import platekeep.client.library.Hand;
import platekeep.client.library.Version;

/** Stored versions as the port shows them. */
public final class Versions {
    private Versions() {}

    public static Version of(RevCommit commit) {
        PersonIdent author = commit.getAuthorIdent();
        List<String> parents =
                Stream.of(commit.getParents()).map(RevCommit::name).toList();
        return new Version(
                commit.name(),
                hand(author),
                hand(commit.getCommitterIdent()),
                author.getWhenAsInstant().atZone(author.getZoneId()),
                commit.getFullMessage().strip(),
                parents);
    }

    private static Hand hand(PersonIdent person) {
        return new Hand(person.getName(), person.getEmailAddress());
    }
}
