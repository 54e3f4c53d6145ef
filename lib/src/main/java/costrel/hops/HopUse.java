package costrel.hops;

import java.util.Locale;

/** Where in the process a hop addition goes, with the minutes that matter there. */
public sealed interface HopUse {

    /**
     * The trade name of the use, as tables spell it.
     *
     * @return for instance "copper" or "dry hop in cask"
     */
    String label();

    /**
     * Whether the spent hops of this use hold wort on its way to the fermenting vessel.
     *
     * @return true for first wort, copper, hot stand and hopback
     */
    default boolean holdsWort() {
        return true;
    }

    /** Added to the mash. */
    record Mash() implements HopUse {
        @Override
        public String label() {
            return "mash";
        }

        @Override
        public boolean holdsWort() {
            return false;
        }
    }

    /** Added to the copper while it fills. */
    record FirstWort() implements HopUse {
        @Override
        public String label() {
            return "first wort";
        }
    }

    /**
     * Added to the boiling copper.
     *
     * @param minutesBeforeCast minutes of boil left, 0 or more
     */
    record Copper(double minutesBeforeCast) implements HopUse {
        public Copper {
            if (!(minutesBeforeCast >= 0 && minutesBeforeCast <= 600)) {
                throw new IllegalArgumentException(
                        "copper addition: expected 0 to 600 min before cast, found " + minutesBeforeCast);
            }
        }

        @Override
        public String label() {
            return "copper";
        }
    }

    /**
     * Added after the boil, before the wort is cooled.
     *
     * @param minutes minutes before the end of the stand; the whole stand where it is infinite
     */
    record HotStand(double minutes) implements HopUse {
        public HotStand {
            if (!(minutes >= 0)) {
                throw new IllegalArgumentException("hot stand: expected 0 min or more, found " + minutes);
            }
        }

        @Override
        public String label() {
            return "hot stand";
        }
    }

    /** Laid in the hopback, through which the wort runs. */
    record Hopback() implements HopUse {
        @Override
        public String label() {
            return "hopback";
        }
    }

    /** Added to the beer in the conditioning tank. */
    record DryHopTank() implements HopUse {
        @Override
        public String label() {
            return "dry hop in tank";
        }

        @Override
        public boolean holdsWort() {
            return false;
        }
    }

    /** Added to each cask at racking. */
    record DryHopCask() implements HopUse {
        @Override
        public String label() {
            return "dry hop in cask";
        }

        @Override
        public boolean holdsWort() {
            return false;
        }
    }

    /**
     * The use with its minutes, for a sheet.
     *
     * @return for instance "copper 90 min"
     */
    default String text() {
        if (this instanceof Copper c) {
            return "copper " + trimmed(c.minutesBeforeCast()) + " min";
        }
        if (this instanceof HotStand s && !Double.isInfinite(s.minutes())) {
            return "hot stand " + trimmed(s.minutes()) + " min";
        }
        return label();
    }

    private static String trimmed(double minutes) {
        return minutes == Math.rint(minutes)
                ? String.format(Locale.ROOT, "%.0f", minutes)
                : String.format(Locale.ROOT, "%.1f", minutes);
    }
}
