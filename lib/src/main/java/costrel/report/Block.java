package costrel.report;

import java.util.List;

/** A part of a sheet. */
public sealed interface Block permits Table, Block.Facts, Block.Note, Block.Heading {

    /**
     * Figures that stand together in one line.
     *
     * @param facts the figures, in reading order
     */
    record Facts(List<Fact> facts) implements Block {

        /**
         * Figures that stand together in one line.
         *
         * @param facts the figures
         */
        public Facts {
            facts = List.copyOf(facts);
        }
    }

    /**
     * A remark in words.
     *
     * @param kind what sort of remark
     * @param lead the words it begins with on paper, such as "left out"; may be empty
     * @param text the remark
     */
    record Note(Kind kind, String lead, String text) implements Block {

        /** Sorts of remark. */
        public enum Kind {
            /** A person must look at this. */
            FINDING("finding"),
            /** Something to be careful with. */
            CAUTION("caution"),
            /** What the figures don't hold. */
            LEFT_OUT("left out"),
            /** What was taken for granted because nothing else was said. */
            ASSUMED("assumed"),
            /** How figures came about or are to be read. */
            HOW("how"),
            /** What to confirm before anybody relies on the sheet. */
            TAKE_CARE("take care");

            private final String label;

            Kind(String label) {
                this.label = label;
            }

            /**
             * Its name, for people and for programs.
             *
             * @return such as "left out"
             */
            public String label() {
                return label;
            }
        }

        /**
         * A remark that begins with the name of its kind.
         *
         * @param kind what sort of remark
         * @param text the remark
         * @return the remark
         */
        public static Note of(Kind kind, String text) {
            return new Note(kind, kind.label(), text);
        }

        /**
         * A remark on how figures came about or are to be read.
         *
         * @param text the remark
         * @return the remark
         */
        public static Note how(String text) {
            return new Note(Kind.HOW, "", text);
        }

        /**
         * The remark as it stands on paper.
         *
         * @return the lead and the text
         */
        public String printed() {
            return lead.isEmpty() ? text : lead + ": " + text;
        }
    }

    /**
     * The heading of what follows.
     *
     * @param text its words
     */
    record Heading(String text) implements Block {}
}
