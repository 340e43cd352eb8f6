package platekeep.client.ui;

import com.formdev.flatlaf.FlatDarkLaf;

/** The dark theme; its values stand in the properties file of the same name. */
public final class PlatekeepDark extends FlatDarkLaf {
    private static final long serialVersionUID = 1L;

    @Override
    public String getName() {
        return "Platekeep dark";
    }
}
