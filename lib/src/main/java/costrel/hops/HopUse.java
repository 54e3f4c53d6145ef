package costrel.hops;

import java.util.OptionalDouble;

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

    /**
     * Whether the hops go into the beer and not into the wort.
     *
     * @return true for dry hops in tank and in cask
     */
    default boolean isDryHop() {
        return false;
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
     * @param minutesBeforeCast minutes of boil left, 0 to 600
     */
    record Copper(double minutesBeforeCast) implements HopUse {
        public Copper {
            minutesBeforeCast = Limits.within("copper addition", minutesBeforeCast, 0, 600, " min before cast");
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
                throw new IllegalArgumentException(
                        "hot stand: expected 0 min or more, found " + Limits.plain(minutes) + " min");
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

        @Override
        public boolean isDryHop() {
            return true;
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

        @Override
        public boolean isDryHop() {
            return true;
        }
    }

    /**
     * The use of a label, with its minutes where it has any.
     *
     * @param label one of the labels, without regard to case and blanks
     * @param minutes minutes before cast of a copper addition; minutes before the end of the stand for a hot stand, which is
     *     the whole stand without them; empty for every other use
     * @return the use
     * @throws IllegalArgumentException for another label, for copper without minutes, or for minutes with a use that has none
     */
    static HopUse of(String label, OptionalDouble minutes) {
        HopUse[] uses = {
            new Mash(),
            new FirstWort(),
            new Copper(0),
            new HotStand(Double.POSITIVE_INFINITY),
            new Hopback(),
            new DryHopTank(),
            new DryHopCask()
        };
        HopUse use = Labels.parse("use of hops", uses, HopUse::label, label);
        if (use instanceof Copper) {
            return new Copper(minutes.orElseThrow(() ->
                    new IllegalArgumentException("copper addition: expected minutes before cast, found nothing")));
        }
        if (minutes.isEmpty()) {
            return use;
        }
        if (use instanceof HotStand) {
            return new HotStand(minutes.getAsDouble());
        }
        throw new IllegalArgumentException(
                use.label() + ": expected no minutes, found " + Limits.plain(minutes.getAsDouble()) + " min");
    }

    /**
     * The use with its minutes, for a sheet.
     *
     * @return for instance "copper 90 min"
     */
    default String text() {
        if (this instanceof Copper c) {
            return "copper " + Limits.rounded(c.minutesBeforeCast(), 1) + " min";
        }
        if (this instanceof HotStand s && !Double.isInfinite(s.minutes())) {
            return "hot stand " + Limits.rounded(s.minutes(), 1) + " min";
        }
        return label();
    }
}
