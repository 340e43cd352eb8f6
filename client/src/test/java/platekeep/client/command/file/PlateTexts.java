package platekeep.client.command.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A small plate in a few versions, written as files, for commands to work on. */
public final class PlateTexts {

    /** A lamp of three rows: two colours, ids, one start. */
    public static final String LAMP = """
            {
              "format": "plate 1",
              "id": "5f0c5a44-9b1e-4a55-8f0e-2f6f4b7a9a01",
              "title": "Quay Lamp",
              "themes": [
                "lighthouses"
              ],
              "ages": [],
              "designers": [
                "Wenna Tarrow"
              ],
              "notes": [],
              "colours": {
                "b": {"name": "brick", "srgb": "#A63C2B", "strands": 4},
                "c": {"name": "chalk", "srgb": "#F4F1E8", "strands": 4}
              },
              "pleats": {"from": 1, "to": 12},
              "starts": [
                {"row": "aa03", "pleat": 2, "cable": "down"}
              ],
              "rows": [
                "aa01 ...bbbbb...",
                "aa02 ..ccccccc..",
                "aa03 .bbbbbbbbb."
              ]
            }
            """;

    private PlateTexts() {}

    /** Writes a file and gives its name back. */
    public static String write(Path folder, String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
        return name;
    }
}
