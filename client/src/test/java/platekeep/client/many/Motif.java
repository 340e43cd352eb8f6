package platekeep.client.many;

import java.util.List;
import platekeep.client.many.Sheet.Brush;

/** Things that can be drawn, each by a few shapes in a box; {@code k} are colour keys, the first the main one. */
enum Motif {
    BOAT("Boat", 1.0, List.of("boats", "harbour", "seaside")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            b.box(k[1], 0.47, 0.02, 0.045, 0.72);
            b.outline(k[2], 0.55, 0.06, 0.55, 0.66, 0.93, 0.66);
            b.outline(k[3], 0.43, 0.14, 0.43, 0.66, 0.14, 0.66);
            b.outline(k[0], 0.03, 0.72, 0.97, 0.72, 0.82, 0.97, 0.17, 0.97);
            b.box(k[3], 0.1, 0.78, 0.8, 0.05);
        }
    },
    TUG("Tug", 1.25, List.of("boats", "harbour", "work")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            b.outline(k[0], 0.02, 0.62, 0.98, 0.55, 0.9, 0.95, 0.1, 0.95);
            b.box(k[1], 0.25, 0.38, 0.4, 0.25).box(k[2], 0.32, 0.43, 0.1, 0.1).box(k[2], 0.5, 0.43, 0.1, 0.1);
            b.box(k[3], 0.35, 0.12, 0.13, 0.26).box(k[1], 0.35, 0.18, 0.13, 0.06);
            b.oval(k[2], 0.52, 0.09, 0.1, 0.06).oval(k[2], 0.68, 0.05, 0.12, 0.05);
        }
    },
    LIGHTHOUSE("Lighthouse", 0.5, List.of("lighthouses", "seaside", "harbour")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            b.outline(k[1], 0.32, 0.25, 0.68, 0.25, 0.85, 0.95, 0.15, 0.95);
            for (int i = 0; i < 3; i++) {
                double y = 0.34 + 0.2 * i;
                b.outline(
                        k[0], 0.3 - 0.05 * i, y, 0.7 + 0.05 * i, y, 0.73 + 0.05 * i, y + 0.1, 0.27 - 0.05 * i, y + 0.1);
            }
            b.box(k[2], 0.33, 0.13, 0.34, 0.12).outline(k[0], 0.5, 0.0, 0.75, 0.13, 0.25, 0.13);
            b.outline(k[3], 0.0, 1.0, 0.15, 0.9, 0.85, 0.9, 1.0, 1.0);
        }
    },
    KITE("Kite", 0.85, List.of("kites", "wind", "summer")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            b.outline(k[0], 0.5, 0.0, 0.85, 0.28, 0.5, 0.68, 0.15, 0.28);
            b.outline(k[1], 0.5, 0.0, 0.85, 0.28, 0.5, 0.28).outline(k[2], 0.5, 0.28, 0.15, 0.28, 0.5, 0.68);
            for (int i = 0; i < 4; i++) {
                double y = 0.68 + 0.08 * i;
                double x = 0.5 + (i % 2 == 0 ? 0.03 : -0.05) * i;
                b.box(k[3], x - 0.01, y, 0.04, 0.08)
                        .outline(k[1], x - 0.1, y, x + 0.12, y + 0.06, x + 0.12, y, x - 0.1, y + 0.06);
            }
        }
    },
    HOUSE("House", 1.05, List.of("houses", "village")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            b.box(k[1], 0.12, 0.42, 0.76, 0.56).outline(k[0], 0.5, 0.05, 1.0, 0.45, 0.0, 0.45);
            b.box(k[3], 0.72, 0.08, 0.1, 0.2);
            b.box(k[2], 0.22, 0.52, 0.16, 0.15).box(k[2], 0.62, 0.52, 0.16, 0.15);
            b.box(k[3], 0.43, 0.68, 0.15, 0.3);
        }
    },
    SNAIL("Snail", 1.5, List.of("garden", "small creatures", "snails")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            b.outline(k[1], 0.0, 0.98, 0.1, 0.8, 0.8, 0.78, 0.84, 0.45, 0.95, 0.4, 1.0, 0.6, 0.93, 0.98);
            b.box(k[1], 0.86, 0.2, 0.03, 0.3).box(k[1], 0.94, 0.18, 0.03, 0.3);
            b.oval(k[0], 0.45, 0.45, 0.33, 0.42).oval(k[2], 0.46, 0.47, 0.23, 0.3);
            b.oval(k[0], 0.45, 0.5, 0.15, 0.19).oval(k[3], 0.46, 0.52, 0.07, 0.09);
        }
    },
    FLOWER("Flower", 0.62, List.of("flowers", "garden", "spring")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            b.box(k[1], 0.46, 0.35, 0.08, 0.65);
            b.outline(k[1], 0.5, 0.85, 0.1, 0.62, 0.2, 0.82).outline(k[1], 0.5, 0.75, 0.92, 0.55, 0.8, 0.74);
            int petals = chance.between(5, 8);
            for (int i = 0; i < petals; i++) {
                double turn = 2 * Math.PI * i / petals;
                b.oval(k[0], 0.5 + 0.27 * StrictMath.cos(turn), 0.26 + 0.15 * StrictMath.sin(turn), 0.17, 0.1);
            }
            b.oval(k[2], 0.5, 0.26, 0.16, 0.1);
        }
    },
    TULIP("Tulip", 0.45, List.of("flowers", "spring")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            b.box(k[1], 0.44, 0.35, 0.12, 0.65).outline(k[1], 0.5, 0.95, 0.02, 0.5, 0.3, 0.7);
            b.outline(k[1], 0.5, 0.95, 0.98, 0.45, 0.7, 0.7);
            b.outline(
                    k[0], 0.1, 0.05, 0.32, 0.17, 0.5, 0.0, 0.68, 0.17, 0.9, 0.05, 0.85, 0.32, 0.6, 0.42, 0.4, 0.42,
                    0.15, 0.32);
            b.outline(k[2], 0.5, 0.0, 0.62, 0.2, 0.5, 0.4, 0.38, 0.2);
        }
    },
    TREE("Apple Tree", 0.9, List.of("autumn", "orchard", "trees")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            b.box(k[3], 0.43, 0.55, 0.14, 0.43).outline(k[3], 0.3, 0.98, 0.45, 0.86, 0.55, 0.86, 0.7, 0.98);
            b.oval(k[1], 0.5, 0.33, 0.46, 0.32).oval(k[1], 0.3, 0.45, 0.27, 0.2).oval(k[1], 0.72, 0.45, 0.26, 0.2);
            int apples = chance.between(4, 9);
            for (int i = 0; i < apples; i++) {
                b.oval(k[0], chance.between(0.16, 0.84), chance.between(0.12, 0.55), 0.055, 0.05);
            }
        }
    },
    FISH("Fish", 1.7, List.of("fish", "seaside")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            b.outline(k[1], 0.7, 0.5, 1.0, 0.12, 0.94, 0.5, 1.0, 0.88).oval(k[0], 0.42, 0.5, 0.4, 0.4);
            for (int i = 0; i < 3; i++) {
                b.box(k[2], 0.32 + 0.13 * i, 0.25, 0.05, 0.5);
            }
            b.oval(k[3], 0.17, 0.4, 0.04, 0.08).outline(k[1], 0.35, 0.14, 0.55, 0.0, 0.6, 0.17);
        }
    },
    BIRD("Gull", 1.35, List.of("birds", "seaside")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            b.oval(k[1], 0.45, 0.55, 0.35, 0.26).oval(k[1], 0.79, 0.32, 0.13, 0.17);
            b.outline(k[0], 0.1, 0.3, 0.62, 0.42, 0.55, 0.72, 0.3, 0.66).outline(k[2], 0.9, 0.28, 1.0, 0.36, 0.9, 0.4);
            b.box(k[3], 0.81, 0.26, 0.03, 0.06).box(k[2], 0.4, 0.78, 0.03, 0.2).box(k[2], 0.52, 0.78, 0.03, 0.2);
        }
    },
    STAR("Star", 1.0, List.of("christmas", "night")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            double[] points = new double[20];
            for (int i = 0; i < 10; i++) {
                double far = i % 2 == 0 ? 0.5 : 0.21;
                points[2 * i] = 0.5 + far * StrictMath.sin(Math.PI * i / 5);
                points[2 * i + 1] = 0.5 - far * StrictMath.cos(Math.PI * i / 5);
            }
            b.outline(k[0], points).oval(k[2], 0.5, 0.5, 0.12, 0.12);
        }
    },
    TOADSTOOL("Toadstool", 0.95, List.of("autumn", "garden", "woods")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            b.outline(k[1], 0.38, 0.45, 0.62, 0.45, 0.68, 0.98, 0.32, 0.98);
            b.oval(k[0], 0.5, 0.42, 0.5, 0.4).box('.', 0.0, 0.5, 0.34, 0.4).box('.', 0.66, 0.5, 0.34, 0.4);
            b.outline(k[1], 0.38, 0.5, 0.62, 0.5, 0.68, 0.98, 0.32, 0.98);
            b.oval(k[2], 0.3, 0.3, 0.07, 0.07)
                    .oval(k[2], 0.55, 0.18, 0.06, 0.06)
                    .oval(k[2], 0.72, 0.36, 0.07, 0.06);
        }
    },
    APPLE("Apple", 0.95, List.of("autumn", "fruit", "orchard")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            b.oval(k[0], 0.34, 0.62, 0.31, 0.36)
                    .oval(k[0], 0.66, 0.62, 0.31, 0.36)
                    .oval(k[2], 0.28, 0.5, 0.07, 0.09);
            b.box(k[3], 0.48, 0.06, 0.05, 0.25).outline(k[1], 0.53, 0.2, 0.68, 0.03, 0.9, 0.1, 0.72, 0.22);
        }
    },
    PEAR("Pear", 0.7, List.of("autumn", "fruit", "orchard")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            b.oval(k[0], 0.5, 0.68, 0.45, 0.3).oval(k[0], 0.5, 0.36, 0.25, 0.25);
            b.outline(k[0], 0.27, 0.35, 0.73, 0.35, 0.9, 0.6, 0.1, 0.6).oval(k[2], 0.36, 0.6, 0.08, 0.1);
            b.box(k[3], 0.48, 0.0, 0.06, 0.16).outline(k[1], 0.54, 0.1, 0.8, 0.02, 0.72, 0.14);
        }
    },
    BALLOON("Balloon", 0.72, List.of("sky", "summer")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            b.outline(k[0], 0.1, 0.45, 0.9, 0.45, 0.62, 0.78, 0.38, 0.78).oval(k[0], 0.5, 0.33, 0.5, 0.33);
            b.oval(k[2], 0.5, 0.33, 0.28, 0.32).oval(k[1], 0.5, 0.33, 0.11, 0.32);
            b.box(k[3], 0.36, 0.85, 0.28, 0.14)
                    .box(k[3], 0.38, 0.77, 0.03, 0.09)
                    .box(k[3], 0.59, 0.77, 0.03, 0.09);
        }
    },
    UMBRELLA("Umbrella", 1.0, List.of("rain", "weather")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            b.oval(k[0], 0.5, 0.48, 0.48, 0.42).box('.', 0.0, 0.48, 1.0, 0.5);
            b.outline(k[2], 0.5, 0.06, 0.64, 0.48, 0.36, 0.48).box(k[3], 0.48, 0.42, 0.045, 0.5);
            b.box(k[3], 0.34, 0.86, 0.18, 0.05).box(k[3], 0.34, 0.8, 0.045, 0.08);
        }
    },
    HEART("Heart", 1.05, List.of("hearts", "wedding")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            b.oval(k[0], 0.27, 0.3, 0.26, 0.28).oval(k[0], 0.73, 0.3, 0.26, 0.28);
            b.outline(k[0], 0.03, 0.4, 0.5, 0.22, 0.97, 0.4, 0.5, 0.98).oval(k[2], 0.25, 0.26, 0.08, 0.08);
        }
    },
    CAT("Cat", 0.8, List.of("animals", "cats")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            b.oval(k[0], 0.45, 0.72, 0.34, 0.28).oval(k[0], 0.45, 0.32, 0.26, 0.2);
            b.outline(k[0], 0.2, 0.3, 0.22, 0.03, 0.42, 0.16).outline(k[0], 0.7, 0.3, 0.68, 0.03, 0.48, 0.16);
            b.outline(k[0], 0.7, 0.9, 0.95, 0.85, 0.9, 0.4, 0.98, 0.4, 1.0, 0.92, 0.75, 1.0);
            b.box(k[1], 0.33, 0.28, 0.06, 0.04)
                    .box(k[1], 0.52, 0.28, 0.06, 0.04)
                    .oval(k[2], 0.45, 0.7, 0.13, 0.17);
        }
    },
    HEN("Hen", 1.15, List.of("animals", "farm", "spring")) {
        @Override
        void draw(Brush b, char[] k, Chance chance) {
            b.oval(k[0], 0.48, 0.6, 0.36, 0.28).oval(k[0], 0.78, 0.32, 0.13, 0.16);
            b.outline(k[0], 0.0, 0.2, 0.3, 0.4, 0.3, 0.7).outline(k[2], 0.9, 0.3, 1.0, 0.36, 0.9, 0.4);
            b.oval(k[1], 0.78, 0.14, 0.07, 0.06).oval(k[3], 0.42, 0.58, 0.18, 0.13);
            b.box(k[2], 0.42, 0.86, 0.03, 0.13).box(k[2], 0.55, 0.86, 0.03, 0.13);
        }
    };

    private final String word;
    private final double shape;
    private final List<String> themes;

    Motif(String word, double shape, List<String> themes) {
        this.word = word;
        this.shape = shape;
        this.themes = themes;
    }

    /** What it is called in a title. */
    String word() {
        return word;
    }

    /** How wide it is for its height. */
    double shape() {
        return shape;
    }

    List<String> themes() {
        return themes;
    }

    /** Whether it stands in water rather than on the ground. */
    boolean swims() {
        return this == BOAT || this == TUG || this == FISH;
    }

    /** Whether it hangs in the sky. */
    boolean flies() {
        return this == KITE || this == BALLOON || this == STAR || this == HEART;
    }

    /** Draws it into the brush's box with four colours. */
    abstract void draw(Brush b, char[] k, Chance chance);
}
