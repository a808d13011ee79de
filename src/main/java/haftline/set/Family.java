package haftline.set;

import haftline.figures.Figures;
import haftline.findings.Code;
import haftline.findings.Finding;
import haftline.findings.Gravity;
import haftline.findings.Place;
import haftline.findings.Remedy;
import haftline.handle.Choices;
import haftline.measure.Units;
import haftline.parts.Kit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How well the pieces of a set match: what they have in common, what differs so that the eye sees
 * it, and what the kits force.
 *
 * <p>The common value of a trait is the middle one of all pieces (the median). A swell may also
 * grow with the root of the visible wood, and a waist with its swell, as larger members of a family
 * do (common practice): only what is outside of both is a difference in kind.
 */
public final class Family {
    /** Differences under this are rounding, in any unit. */
    private static final double ROUNDING = 1e-9;

    /** A piece of the family. */
    public record Member(Piece piece, Figures figures) {}

    /** How a piece stands in one trait. */
    public enum Likeness {
        /** The eye sees no difference. */
        ALIKE,
        /** The eye sees it, and still one family. */
        SEEN,
        /** It reads as another pattern. */
        APART
    }

    /** Who decides a trait. */
    public enum Cause {
        /** The set, for all pieces that do not decide otherwise. */
        SET,
        /** This piece alone, by a choice or a shape of its own. */
        PIECE,
        /** Its kit: blade, ferrule or cap. */
        KIT
    }

    /**
     * A trait of one piece.
     *
     * @param piece name of the piece
     * @param value the trait, in its unit
     * @param difference value less common value
     * @param percent difference as a share of the common value, %; not a number for shares and
     *     degrees
     * @param low least value that belongs to the family, before {@link Trait#apart()}
     * @param high greatest value that belongs to the family, before {@link Trait#apart()}
     * @param likeness how it stands
     * @param cause who decides it
     */
    public record Entry(
            String piece,
            double value,
            double difference,
            double percent,
            double low,
            double high,
            Likeness likeness,
            Cause cause) {}

    /**
     * One trait of all pieces.
     *
     * @param trait the trait
     * @param common the middle value
     * @param entries one entry a piece that has the trait, in the set's order
     */
    public record Row(Trait trait, double common, List<Entry> entries) {
        /** Copies the list. */
        public Row {
            entries = List.copyOf(entries);
        }

        /**
         * The entry of a piece.
         *
         * @param piece its name
         * @return the entry, or empty where it lacks the trait
         */
        public Optional<Entry> entry(String piece) {
            return entries.stream().filter(entry -> entry.piece().equals(piece)).findFirst();
        }
    }

    /**
     * A finding on the family.
     *
     * @param piece the piece that falls out of it
     * @param trait in which trait
     * @param finding the finding
     */
    public record Stray(String piece, Trait trait, Finding finding) {}

    private final List<Member> members;
    private final List<Row> rows;
    private final FamilyMiddles middles;
    private final Map<String, Member> byName = new HashMap<>();

    private Family(List<Member> members) {
        this.members = List.copyOf(members);
        this.middles = new FamilyMiddles(members);
        for (Member member : members) {
            byName.putIfAbsent(member.piece().name(), member);
        }
        List<Row> found = new ArrayList<>();
        for (Trait trait : members.size() < 2 ? new Trait[0] : Trait.values()) {
            Common common =
                    new Common(middles.of(trait), middles.of(Trait.SWELL_DIAMETER), middles.wood());
            List<Entry> entries = new ArrayList<>();
            for (Member member : members) {
                entry(member, trait, common).ifPresent(entries::add);
            }
            if (entries.size() > 1) {
                found.add(new Row(trait, common.middle(), entries));
            }
        }
        rows = List.copyOf(found);
    }

    /**
     * The pieces that can be drawn.
     *
     * @return in the set's order
     */
    public List<Member> members() {
        return members;
    }

    /**
     * What they have in common and how each stands.
     *
     * @return one row a trait
     */
    public List<Row> rows() {
        return rows;
    }

    /**
     * The family of a set.
     *
     * @param members the pieces that can be drawn, in the set's order
     * @return their family; without rows where there are fewer than two
     */
    public static Family of(List<Member> members) {
        return new Family(members);
    }

    /** The middle values that a trait is held against. */
    private record Common(double middle, double swellMm, double woodMm) {}

    /** How a piece stands; empty where it lacks the trait. */
    private static Optional<Entry> entry(Member member, Trait trait, Common common) {
        double value = trait.of(member.figures());
        if (Double.isNaN(value)) {
            return Optional.empty();
        }
        double middle = common.middle();
        double grown = middle * growth(member.figures(), trait, common);
        double low = Math.min(middle, grown);
        double high = Math.max(middle, grown);
        double off = Math.max(0, Math.max(low - value, value - high));
        Likeness likeness =
                off > trait.apart() + ROUNDING
                        ? Likeness.APART
                        : Math.abs(value - middle) > trait.alike() + ROUNDING
                                ? Likeness.SEEN
                                : Likeness.ALIKE;
        double percent =
                trait.unit() == Trait.Unit.MM && middle > 0
                        ? 100 * (value - middle) / middle
                        : Double.NaN;
        return Optional.of(
                new Entry(
                        member.piece().name(),
                        value,
                        value - middle,
                        percent,
                        low,
                        high,
                        likeness,
                        cause(member, trait)));
    }

    /** How much larger the trait of a larger piece may be. */
    private static double growth(Figures figures, Trait trait, Common common) {
        return switch (trait) {
            case SWELL_DIAMETER -> Math.sqrt(FamilyMiddles.woodMm(figures) / common.woodMm());
            case WAIST_DIAMETER -> figures.grip().greatestMm() / common.swellMm();
            case WAIST_PLACE -> FamilyMiddles.woodMm(figures) / common.woodMm();
            default -> 1;
        };
    }

    private static Cause cause(Member member, Trait trait) {
        Choices own = member.piece().choices();
        boolean shaped =
                member.piece().shape().isPresent()
                        || !own.nodeDiametersMm().isEmpty()
                        || !own.nodePlaces().isEmpty();
        Kit kit = member.figures().handle().brief().kit();
        return switch (trait) {
            case SHOULDER_DIAMETER -> Cause.KIT;
            case BUTT_DIAMETER ->
                    kit.cap().isPresent()
                            ? Cause.KIT
                            : own.buttMm().isPresent() ? Cause.PIECE : Cause.SET;
            case LENGTH -> own.lengthRatio().isPresent() ? Cause.PIECE : Cause.KIT;
            case SWELL_DIAMETER, WAIST_DIAMETER ->
                    shaped || own.swellMm().isPresent() ? Cause.PIECE : Cause.SET;
            // A slope follows from the diameters on either side.
            case SHOULDER_SLOPE, BUTT_SLOPE ->
                    shaped || own.swellMm().isPresent() ? Cause.PIECE : Cause.KIT;
            case SWELL_PLACE, WAIST_PLACE -> shaped ? Cause.PIECE : Cause.SET;
        };
    }

    /**
     * The row of a trait.
     *
     * @param trait the trait
     * @return the row, or empty where fewer than two pieces have the trait
     */
    public Optional<Row> row(Trait trait) {
        return rows.stream().filter(row -> row.trait() == trait).findFirst();
    }

    /**
     * What falls out of the family: {@code note} where the piece alone decided so or its kit forces
     * it, else {@code warn}; never a {@code stop}, for each can be made.
     *
     * @return the strays, gravest first, then in the order of the traits
     */
    public List<Stray> strays() {
        List<Stray> strays = new ArrayList<>();
        for (Row row : rows) {
            for (Entry entry : row.entries()) {
                if (entry.likeness() == Likeness.APART) {
                    strays.add(new Stray(entry.piece(), row.trait(), finding(row.trait(), entry)));
                }
            }
        }
        strays.sort(Comparator.comparing(stray -> stray.finding().gravity()));
        return List.copyOf(strays);
    }

    private Finding finding(Trait trait, Entry entry) {
        Figures figures = member(entry.piece()).figures();
        double swellX = figures.grip().greatestX();
        double x =
                switch (trait) {
                    case SWELL_DIAMETER, SWELL_PLACE -> swellX;
                    case WAIST_DIAMETER, WAIST_PLACE -> Trait.WAIST_PLACE.of(figures);
                    case SHOULDER_DIAMETER, SHOULDER_SLOPE -> 0;
                    case BUTT_DIAMETER, BUTT_SLOPE -> figures.handle().buttX();
                    case LENGTH -> Double.NaN;
                };
        double limit =
                entry.value() > entry.high()
                        ? entry.high() + trait.apart()
                        : entry.low() - trait.apart();
        Finding.Unit unit =
                switch (trait.unit()) {
                    case MM -> Finding.Unit.MM;
                    case DEG -> Finding.Unit.DEG;
                    case SHARE -> Finding.Unit.PLAIN;
                };
        Gravity gravity = entry.cause() == Cause.SET ? Gravity.WARN : Gravity.NOTE;
        return new Finding(
                Code.OUT_OF_FAMILY,
                gravity,
                Place.PIECE,
                x,
                entry.value(),
                limit,
                unit,
                trait.words() + why(trait, entry.cause()));
    }

    private static String why(Trait trait, Cause cause) {
        return switch (cause) {
            case SET -> "";
            case PIECE -> ", as chosen for this piece";
            case KIT -> ", forced by its " + part(trait);
        };
    }

    /** The part of a kit that forces a trait. */
    private static String part(Trait trait) {
        return switch (trait) {
            case BUTT_DIAMETER -> "cap";
            case LENGTH -> "blade";
            case BUTT_SLOPE, SHOULDER_SLOPE -> "parts";
            default -> "ferrule";
        };
    }

    /**
     * Who decides a trait of a piece, in words.
     *
     * @param trait the trait
     * @param cause who
     * @return such as {@code forced by its cap}; empty for what the set decides
     */
    public static String because(Trait trait, Cause cause) {
        String why = why(trait, cause);
        return why.isEmpty() ? "" : why.substring(2);
    }

    Member member(String piece) {
        return Optional.ofNullable(byName.get(piece)).orElseThrow();
    }

    /**
     * How a piece would stand with other figures, the middle values following it; empty where it
     * would lack the trait, or be alone with it.
     */
    Optional<Entry> entryWith(String piece, Figures figures, Trait trait) {
        Figures now = member(piece).figures();
        if (middles.count(trait, now, figures) < 2) {
            return Optional.empty();
        }
        Common common =
                new Common(
                        middles.of(trait, now, figures),
                        middles.of(Trait.SWELL_DIAMETER, now, figures),
                        middles.wood(now, figures));
        return entry(new Member(member(piece).piece(), figures), trait, common);
    }

    /**
     * The least change that brings a piece back into the family in one trait, tried on the piece
     * and on the family.
     *
     * @param stray what falls out
     * @param units unit of the lengths in the words
     * @return a sentence of the imperative without a full stop; empty where no one choice does it
     */
    public Optional<String> remedy(Stray stray, Units units) {
        return tried(stray, units).map(Remedy::text);
    }

    /**
     * The same change with the choices that make it.
     *
     * @param stray what falls out
     * @param units unit of the lengths in the words
     * @return the remedy, its choices empty where a part must change; empty where no one choice
     *     does it
     */
    public Optional<Remedy> tried(Stray stray, Units units) {
        return new FamilyRemedy(this, stray, units).find();
    }
}
