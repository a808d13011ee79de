package haftline.handle;

import haftline.parts.Blade;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.parts.Kit;
import haftline.parts.Tang;
import haftline.shape.Butt;
import haftline.shape.Detail;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Place;
import haftline.shape.Shape;
import haftline.shape.Size;
import haftline.stock.Rack;
import haftline.stock.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Puts a brief together for a test, starting from the parts of "P1" on a plain cylinder in cherry
 * without cap or wander; each method changes one thing.
 */
public final class TestBrief {
    private Blade blade = P1.blade();
    private Tang tang = P1.round(6, 45);
    private double seatMm;
    private Ferrule ferrule = P1.ferrule();
    private EndCap cap;
    private Metals metals = SampleStock.metals();
    private Stock stock = SampleStock.cherry();
    private Rack rack = SampleStock.tenths();
    private Rules rules = Rules.COMMON_PRACTICE;
    private ChoicesBuilder choices = Choices.builder().buttMm(14).wander(new Wander(0, 0));
    private final List<Node> nodes = new ArrayList<>();
    private final List<Detail> details = new ArrayList<>();
    private Butt butt = new Butt.Square();
    private double shadowLineMm;

    public TestBrief blade(Blade changed) {
        blade = changed;
        return this;
    }

    public TestBrief tang(Tang changed) {
        tang = changed;
        return this;
    }

    public TestBrief seatMm(double mm) {
        seatMm = mm;
        return this;
    }

    public TestBrief ferrule(Ferrule changed) {
        ferrule = changed;
        return this;
    }

    /** A plain ferrule by its sizes. */
    public TestBrief ferrule(double bore, double outside, double length) {
        return ferrule(
                new Ferrule(
                        P1.exactly(bore),
                        P1.exactly(outside),
                        P1.exactly(outside),
                        P1.exactly(length),
                        0,
                        OptionalDouble.empty(),
                        0,
                        "brass",
                        OptionalDouble.empty()));
    }

    public TestBrief cap(EndCap changed) {
        cap = changed;
        return this;
    }

    public TestBrief metals(Metals changed) {
        metals = changed;
        return this;
    }

    public TestBrief stock(Stock changed) {
        stock = changed;
        return this;
    }

    public TestBrief rack(Rack changed) {
        rack = changed;
        return this;
    }

    public TestBrief rules(Rules changed) {
        rules = changed;
        return this;
    }

    /** Rules of common practice with drills that wobble. */
    public TestBrief eccentricityMm(double mm) {
        Rules.Bores usual = Rules.Bores.COMMON_PRACTICE;
        return bores(
                new Rules.Bores(
                        usual.depthAllowanceMm(),
                        usual.capOverMm(),
                        usual.capAllowanceMm(),
                        usual.pointAngleDeg(),
                        mm,
                        usual.mostSteps(),
                        usual.webMm()));
    }

    public TestBrief bores(Rules.Bores changed) {
        rules =
                new Rules(
                        rules.lengths(),
                        rules.fits(),
                        changed,
                        rules.tenons(),
                        rules.walls(),
                        rules.wander(),
                        rules.balance(),
                        rules.blanks(),
                        rules.climate(),
                        rules.copying(),
                        rules.readings(),
                        rules.spreads());
        return this;
    }

    public TestBrief tenons(Rules.Tenons changed) {
        rules =
                new Rules(
                        rules.lengths(),
                        rules.fits(),
                        rules.bores(),
                        changed,
                        rules.walls(),
                        rules.wander(),
                        rules.balance(),
                        rules.blanks(),
                        rules.climate(),
                        rules.copying(),
                        rules.readings(),
                        rules.spreads());
        return this;
    }

    public TestBrief walls(Rules.Walls changed) {
        rules =
                new Rules(
                        rules.lengths(),
                        rules.fits(),
                        rules.bores(),
                        rules.tenons(),
                        changed,
                        rules.wander(),
                        rules.balance(),
                        rules.blanks(),
                        rules.climate(),
                        rules.copying(),
                        rules.readings(),
                        rules.spreads());
        return this;
    }

    public TestBrief spreads(Spreads changed) {
        rules =
                new Rules(
                        rules.lengths(),
                        rules.fits(),
                        rules.bores(),
                        rules.tenons(),
                        rules.walls(),
                        rules.wander(),
                        rules.balance(),
                        rules.blanks(),
                        rules.climate(),
                        rules.copying(),
                        rules.readings(),
                        changed);
        return this;
    }

    public TestBrief climate(Rules.Climate changed) {
        rules =
                new Rules(
                        rules.lengths(),
                        rules.fits(),
                        rules.bores(),
                        rules.tenons(),
                        rules.walls(),
                        rules.wander(),
                        rules.balance(),
                        rules.blanks(),
                        changed,
                        rules.copying(),
                        rules.readings(),
                        rules.spreads());
        return this;
    }

    /** Adds choices over those already made. */
    public TestBrief choose(ChoicesBuilder more) {
        choices = more.build().over(choices.build()).toBuilder();
        return this;
    }

    public TestBrief fit(Fit fit) {
        return choose(Choices.builder().fit(fit));
    }

    public TestBrief wander(double e0, double k) {
        return choose(Choices.builder().wander(new Wander(e0, k)));
    }

    public TestBrief smooth(double share, double diameter) {
        return node(share, diameter, Join.SMOOTH);
    }

    public TestBrief crisp(double share, double diameter) {
        return node(share, diameter, Join.CRISP);
    }

    private TestBrief node(double share, double diameter, Join join) {
        nodes.add(
                new Node(
                        "node " + nodes.size(),
                        new Place.Share(share),
                        new Size.Plain(diameter),
                        join,
                        OptionalDouble.empty(),
                        false));
        return this;
    }

    public TestBrief detail(Detail detail) {
        details.add(detail);
        return this;
    }

    public TestBrief butt(Butt changed) {
        butt = changed;
        return this;
    }

    public TestBrief shadowLineMm(double mm) {
        shadowLineMm = mm;
        return this;
    }

    public Brief brief() {
        return new Brief(
                "test piece",
                new Kit("test kit", blade, tang, seatMm, ferrule, Optional.ofNullable(cap)),
                metals,
                stock,
                SampleStock.epoxy(),
                new Shape(
                        "test shape",
                        "",
                        OptionalDouble.empty(),
                        nodes,
                        OptionalDouble.empty(),
                        details,
                        List.of(),
                        butt,
                        shadowLineMm),
                rules,
                rack,
                choices.build());
    }

    /** The handle, which must resolve. */
    public Handle handle() {
        return P1.handle(brief());
    }
}
