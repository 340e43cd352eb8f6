package platekeep.client.sample;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;

/** Stands at the moment that the story tells of. */
final class StoryClock extends Clock {
    private ZonedDateTime now;

    StoryClock(ZonedDateTime now) {
        this.now = now;
    }

    void set(ZonedDateTime moment) {
        now = moment;
    }

    @Override
    public ZoneId getZone() {
        return now.getZone();
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return Clock.fixed(now.toInstant(), zone);
    }

    @Override
    public Instant instant() {
        return now.toInstant();
    }
}
