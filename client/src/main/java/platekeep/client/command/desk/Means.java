package platekeep.client.command.desk;

import java.nio.file.Path;
import platekeep.client.library.Libraries;

/** What only some commands need. Each is made when it is asked for, since loading it costs a command's time. */
public interface Means {

    /** Makes and opens libraries. */
    Libraries libraries();

    /** Lets native Git use this program. */
    SetUp setUp();

    /** The sample libraries. */
    Samples samples();

    /** Reads scans and photos. */
    Scans scans();

    /** Copies and moves plates between libraries. */
    Carrier carrier();

    /** The window. */
    Screen screen();

    /** The folder of the user's data, where the sample libraries lie unless another folder is named. */
    Path dataFolder();
}
