package platekeep.client.ui;

import com.formdev.flatlaf.FlatLightLaf;

/** The light theme; its values stand in the properties file of the same name. */
public final class PlatekeepLight extends FlatLightLaf {
    private static final long serialVersionUID = 1L;

    @Override
    public String getName() {
        return "Platekeep light";
    }
}
