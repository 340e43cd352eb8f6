package platekeep.client.gallery;

import java.awt.Component;
import java.util.Optional;
import javax.swing.JMenu;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Widgets;

/** The menu of searches that are kept under a name: kept, asked again, renamed, removed. */
final class SearchItems {
    private final Component over;
    private final Narrowing narrowing;

    SearchItems(Component over, Narrowing narrowing) {
        this.over = over;
        this.narrowing = narrowing;
    }

    JMenu menu() {
        JMenu menu = new JMenu("Searches");
        menu.setName("menu-searches");
        menu.setMnemonic('S');
        fill(menu);
        menu.addMenuListener(new MenuListener() {
            @Override
            public void menuSelected(MenuEvent e) {
                fill(menu);
            }

            @Override
            public void menuDeselected(MenuEvent e) {
                // it is filled anew when it is opened
            }

            @Override
            public void menuCanceled(MenuEvent e) {
                // it is filled anew when it is opened
            }
        });
        return menu;
    }

    private void fill(JMenu menu) {
        menu.removeAll();
        menu.add(Widgets.item("menu-save-search", "Keep this search…", "ctrl K", this::keep));
        if (narrowing.savedNames().isEmpty()) {
            return;
        }
        menu.addSeparator();
        JMenu rename = new JMenu("Rename");
        JMenu remove = new JMenu("Remove");
        int number = 0;
        for (String name : narrowing.savedNames()) {
            number++;
            menu.add(Widgets.item("menu-search-" + number, name, "", () -> narrowing.reopen(name)));
            rename.add(Widgets.item("menu-rename-" + number, name + "…", "", () -> rename(name)));
            remove.add(Widgets.item("menu-remove-" + number, name, "", () -> narrowing.forget(name)));
        }
        menu.addSeparator();
        menu.add(rename);
        menu.add(remove);
    }

    private void keep() {
        ask("Keep this search", narrowing.query().words()).ifPresent(narrowing::save);
    }

    private void rename(String name) {
        ask("Rename this search", name).ifPresent(newName -> narrowing.rename(name, newName));
    }

    private Optional<String> ask(String title, String text) {
        JTextField name = new JTextField(text, 26);
        name.setName("search-name");
        JPanel form = new JPanel(new MigLayout("insets 0, fillx", "[right]10[grow, fill]"));
        form.add(Widgets.label("search-name-label", "Name"));
        form.add(name);
        Ask.Answer answer = Ask.ask(
                over,
                title,
                form,
                "Keep",
                () -> name.getText().isBlank() ? Optional.of("Give the search a name.") : Optional.empty());
        return answer == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(name.getText().strip());
    }
}
