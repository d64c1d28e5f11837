using BendSheet.Core.Findings;
using BendSheet.Core.Plumbing.Rules;
using BendSheet.Files.Reading;
using BendSheet.Files.Tests.Reading;
using static BendSheet.Files.Tests.Plumbing.SmallCar;

namespace BendSheet.Files.Tests.Plumbing;

/// <summary>Each rule with a slip that a person could make in the car's parts; the car without it is silent.</summary>
public class PlumbingRuleTests
{
    private const string Rear = "rear: {from: {at: master.rear, fitting: inverted}, to: {at: rear-cross.in, fitting: inverted}";

    private const string LeftRear = "left-rear: {kind: wheel-cylinder, mounted: chassis, ports: inverted 3/16}";

    private const string RightRear = "right-rear: {kind: wheel-cylinder, mounted: chassis, ports: inverted 3/16}";

    [Fact]
    public void A_sound_car_is_silent() => Assert.Empty(Findings(Sound));

    [Fact]
    public void A_flare_of_37_degrees_on_a_seat_of_45_is_told_why() => HasOne(
        With((Rear, "rear: {from: {at: ^master.rear, fitting: an3}, to: {at: rear-cross.in, fitting: inverted}")),
        Severity.Error,
        SeatsDiffer.Rule,
        "end A of line rear has a 37° single flare, and master.rear has an inverted 45° seat: cones of different angles touch only on a "
        + "line and leak; "
        + "use a fitting with `flare: double 45` in the place of an3, or an adapter between them");

    [Fact]
    public void A_bubble_flare_on_a_cone_is_an_error() => HasOne(
        With(("inverted: {flare: double 45, ", "bubble: {flare: bubble, thread: 3/8-24}\n  inverted: {flare: double 45, "),
            (Rear, Rear.Replace("rear-cross.in, fitting: inverted", "^rear-cross.in, fitting: bubble", StringComparison.Ordinal))),
        Severity.Error,
        SeatsDiffer.Rule,
        "end B of line rear has a bubble flare, and rear-cross.in has an inverted 45° seat: they do not seal on each other; "
        + "use a fitting with `flare: double 45` in the place of bubble, or an adapter between them");

    [Fact]
    public void A_plain_end_seals_on_no_cone() => HasOne(
        With(("inverted: {flare: double 45, ", "plain: {flare: none}\n  inverted: {flare: double 45, "),
            (Rear, Rear.Replace("rear-cross.in, fitting: inverted", "^rear-cross.in, fitting: plain", StringComparison.Ordinal))),
        Severity.Error,
        SeatsDiffer.Rule,
        "end B of line rear has a plain end, and rear-cross.in has an inverted 45° seat: without a flare nothing seals there; "
        + "use a fitting with `flare: double 45` in the place of plain, or an adapter between them");

    [Fact]
    public void A_hoses_own_end_is_compared_as_well() => HasOne(
        With(("right-front.inlet, is: M10x1 banjo", "^right-front.inlet, is: M10x1 bubble")),
        Severity.Error,
        SeatsDiffer.Rule,
        "hose right-hose has a bubble-flare seat, and right-front.inlet has a flat face for a banjo: they do not seal on each other; put "
            + "an adapter between them");

    [Fact]
    public void A_nut_over_the_cone_is_not_one_that_goes_inside() => HasOne(
        With(
            ("left-bracket.out, is: an-3", "^left-bracket.out, is: inverted 3/16"),
            ("left-bracket: {kind: bulkhead, ports: an-3", "left-bracket: {kind: bulkhead, ports: {in: an-3, out: 3/8-24 flare 45}")),
        Severity.Error,
        SeatsDiffer.Rule,
        "hose left-hose has an inverted 45° seat, and left-bracket.out has a 45° cone with the nut over it: one nut goes over the cone "
        + "and the other into the port; "
        + "put an adapter between them");

    [Fact]
    public void Nothing_is_connected_to_a_bleed_screw() => HasOne(
        With(
            ("{at: left-rear.inlet, fitting: inverted}", "{at: ^left-rear.bleeder, fitting: inverted}"),
            (LeftRear, LeftRear.Replace("inverted 3/16", "[bleeder]", StringComparison.Ordinal))),
        Severity.Error,
        SeatsDiffer.Rule,
        "end B of line rear-left has a 45° double flare, and left-rear.bleeder has a bleed screw: nothing can be connected to it; take "
            + "another port");

    [Fact]
    public void A_nut_with_another_thread_is_an_error() => HasOne(
        With(
            ("rear: {is: 3/8-24 inverted 45", "rear: {is: M10x1 inverted 45"),
            (Rear, Rear.Replace("master.rear", "^master.rear", StringComparison.Ordinal))),
        Severity.Error,
        ThreadsDiffer.Rule,
        "end A of line rear has thread 3/8-24, and master.rear has M10x1: one does not go into the other; use a nut with M10x1, or an "
            + "adapter between them");

    [Fact]
    public void A_thread_from_memory_is_only_a_warning() => HasOne(
        With(
            ("rear: {is: 3/8-24 inverted 45", "rear: {is: inverted 1/4"),
            (Rear, Rear.Replace("master.rear", "^master.rear", StringComparison.Ordinal))),
        Severity.Warning,
        ThreadsDiffer.Rule,
        "end A of line rear has thread 3/8-24, and master.rear has 7/16-24: one does not go into the other; use a nut with 7/16-24, or "
        + "an adapter between them "
        + "(SAE J512, from memory: check, or type the thread that the part has)");

    [Fact]
    public void A_port_for_larger_tube_is_a_warning_where_the_fitting_does_not_say_its_thread() => HasOne(
        With(
            ("an3: {flare: single 37, thread: 3/8-24}", "an3: {flare: single 37}"),
            ("front-tee: {kind: tee, ports: an-3", "front-tee: {kind: tee, ports: {in: an-4, left: an-3, right: an-3}"),
            ("front-tee.in", "^front-tee.in")),
        Severity.Warning,
        ThreadsDiffer.Rule,
        "front-tee.in has thread 7/16-20, and nuts for tube of 3/16 in on a 37° cone have 3/8-24 (AN818 Rev 20, Figure 1): "
        + "if yours has 7/16-20, say so with `thread: 7/16-20` in fitting an3; otherwise change the port or the tube");

    [Fact]
    public void A_taper_thread_in_a_straight_one_is_an_error() => HasOne(
        With(("front: {is: 1/8-27 taper", "front: {is: 3/8-24 inverted 45"), ("{in: master.front}", "{in: ^master.front}")),
        Severity.Error,
        TaperAgainstStraight.Rule,
        "elbow.in has a taper thread and master.front a straight one: the taper jams in it and neither seals; "
        + "put an adapter between them, taper on one side and `inverted 45` on the other");

    [Fact]
    public void A_tube_nut_in_a_taper_thread_is_an_error() => HasOne(
        With(
            ("rear: {is: 3/8-24 inverted 45", "rear: {is: 1/8 npt"),
            (Rear, Rear.Replace("master.rear", "^master.rear", StringComparison.Ordinal))),
        Severity.Error,
        TaperAgainstStraight.Rule,
        "master.rear has a taper thread and end A of line rear a straight one: the taper jams in it and neither seals; "
        + "put an adapter between them, taper on one side and `inverted 45` on the other");

    [Fact]
    public void A_bubble_flare_on_quarter_inch_tube_is_a_warning()
    {
        var quarter = TypedTemplates.Top.Replace("3/16 in", "1/4 in", StringComparison.Ordinal);
        HasOne(
            quarter + "fittings: {b: {flare: ^bubble}}\nparts: {u: {kind: plug}, v: {kind: plug}}\n"
                + "lines: {fl: {from: {at: u.end, fitting: b}, to: {at: v.end, fitting: b}, rows: [{straight: 100, bend: 90}, {straight: "
                + "90}]}}\n",
            Severity.Warning,
            FlareAndTube.Rule,
            "fitting b has a bubble flare, and it sits on tube of 1/4 in: bubble flares are for tube of 4.75, 6, 8 or 10 mm (ISO 4038, "
            + "from memory: check); "
            + "use such tube, or another flare and port");
    }

    [Fact]
    public void A_double_flare_on_stainless_tube_is_one_warning_for_all_its_ends() => HasOne(
        With(("copper-nickel", "stainless steel"), ("inverted: {flare: double 45", "inverted: {flare: ^double 45")),
        Severity.Warning,
        FlareAndTube.Rule,
        "fitting inverted has a double flare, and it sits on stainless steel, which splits when it is folded back (common practice, no "
        + "source): "
        + "use a 37° single flare with a sleeve and such a port, or another tube");

    [Fact]
    public void A_name_with_a_dot_in_it_leads_to_its_part() => Assert.Empty(Findings(
        With(("  left-rear: {", "  rear.left: {"), ("left-rear.inlet", "rear.left.inlet"))));

    [Fact]
    public void A_port_takes_one_line() => HasOne(
        With(
            ("rear-right: {from: {at: rear-cross.right", "rear-right: {from: {at: ^rear-cross.left"),
            ("rear-cross: {kind: cross, ports: inverted 3/16}", "rear-cross: {kind: cross, ports: {in: inverted 3/16, left: inverted "
                + "3/16, out: inverted 3/16}}")),
        Severity.Error,
        PortUsedTwice.Rule,
        "rear-cross.left is taken already by line rear-left (line 29): name another port, or put a tee there");

    [Fact]
    public void Open_ports_are_one_warning_for_each_part()
    {
        HasOne(
            With(
                ("ports: {front: {is: 1/8-27 taper, circuit: front},", "ports: {front: {is: 1/8-27 taper, circuit: front}, spare: an-3, "
                    + "test: an-3,"), ("  master:\n", "  ^master:\n")),
            Severity.Warning,
            OpenPort.Rule,
            "nothing goes to master, ports spare, test: connect them, close with a `plug`, or leave out of its `ports` what is not on "
                + "your car");
    }

    [Fact]
    public void A_plug_closes_a_port() => Assert.Empty(Findings(
        With(
            ("ports: {front: {is: 1/8-27 taper, circuit: front},", "ports: {front: {is: 1/8-27 taper, circuit: front}, spare: an-3,"),
            ("  front-tee:", "  cap: {kind: plug, ports: an-3, screws-into: master.spare}\n  front-tee:"))));

    [Fact]
    public void A_plug_that_sits_nowhere_is_told_how_to_say_where() => HasOne(
        With(("  front-tee:", "  ^cap: {kind: plug, ports: an-3}\n  front-tee:")),
        Severity.Warning,
        OpenPort.Rule,
        "plug cap sits nowhere: say where with `screws-into`, such as `screws-into: tee.left`, or take it out");

    [Fact]
    public void A_wheel_without_pressure_is_an_error()
    {
        HasOne(
            With(
                ("  left-rear: {", "  ^left-rear: {"),
                ("{at: left-rear.inlet, fitting: inverted}", "{at: other.inlet, fitting: inverted}"),
                ("  rear-cross: {", "  other: {kind: wheel-cylinder, mounted: chassis, ports: inverted 3/16}\n  rear-cross: {"),
                ("mounted: chassis, ports: inverted 3/16}\n  right-rear", "ports: [bleeder]}\n  right-rear")),
            Severity.Error,
            WheelNotReached.Rule,
            "no master cylinder reaches wheel-cylinder left-rear: lead a line or a hose to it (`show --parts` shows how far each "
                + "circuit goes)");
    }

    [Fact]
    public void Circuits_that_meet_are_an_error_at_the_line_that_joins_them()
    {
        var found = Findings(
            With(
                ("right-front: {kind: caliper, ports: {inlet: M10x1 banjo, bleeder: }}", "right-front: {kind: caliper, mounted: "
                    + "chassis, ports: {inlet: M10x1 banjo, second: inverted 3/16}}"),
            (LeftRear, LeftRear.Replace("ports: ", "ports: {inlet: inverted 3/16, second: ", StringComparison.Ordinal) + "}"),
            ("  rear-right: {", "  bridge: {from: {at: left-rear.second, fitting: inverted}, to: {at: right-front.second, fitting: "
                + "inverted}, rows: [{straight: 1900}]}\n  rear-right: {")));
        var finding = Assert.Single(found);
        Assert.Same(CircuitsJoined.Rule, finding.Rule);
        Assert.Equal(Severity.Error, finding.Severity);
        Assert.Equal((30, 3), (finding.Position.Line, finding.Position.Column));
        Assert.Equal(
            "line bridge joins two circuits that must stay apart, master, circuit rear and master, circuit front: lead it to a port of "
                + "its own circuit", finding.Message);
    }

    [Fact]
    public void A_part_keeps_two_circuits_apart_that_it_says_are_apart()
    {
        const string Ports =
            "{fi: {is: inverted 3/16, circuit: front}, fo: {is: inverted 3/16, circuit: front}, ri: {is: inverted 3/16, circuit: rear}, "
                + "ro: {is: inverted 3/16, circuit: rear}}";
        var file = TypedTemplates.Top + $$$$"""
            pedal-switch: true
            parts:
              m: {kind: master-cylinder, ports: {f: {is: inverted 3/16, circuit: front}, r: {is: inverted 3/16, circuit: rear}}}
              v: {kind: valve, ports: {{{{Ports}}}}}
              fw: {kind: caliper, mounted: chassis, ports: inverted 3/16}
              rw: {kind: caliper, mounted: chassis, ports: inverted 3/16}
            lines:
              a: {from: m.f, to: v.fi, rows: [{straight: 100}]}
              b: {from: m.r, to: ^v.ri, rows: [{straight: 100}]}
              c: {from: v.fo, to: fw.inlet, rows: [{straight: 100}]}
              d: {from: v.ro, to: rw.inlet, rows: [{straight: 100}]}

            """;
        Assert.Empty(Findings(file));
        var joined = Findings(file.Replace(", circuit: rear}, ro", ", circuit: front}, ro", StringComparison.Ordinal));
        Assert.Equal("wheel-not-reached, circuits-joined", Rules(joined));
    }

    [Fact]
    public void A_ring_is_a_warning_at_what_closes_it() => HasOne(
        With(
            (LeftRear, LeftRear.Replace("ports: ", "ports: {inlet: inverted 3/16, second: ", StringComparison.Ordinal) + "}"),
            (RightRear, RightRear.Replace("ports: ", "ports: {inlet: inverted 3/16, second: ", StringComparison.Ordinal) + "}"),
            ("{straight: 500}]}\n  rear-right: {", "{straight: 500}]}\n  bridge: {from: {at: left-rear.second, fitting: inverted}, to: "
                + "{at: right-rear.second, fitting: inverted}, rows: [{straight: 900}]}\n  ^rear-right: {")),
        Severity.Warning,
        Ring.Rule,
        "line rear-right closes a ring: rear-cross.right and right-rear.inlet are joined already by another way, and air between them "
        + "cannot be bled out for certain; "
        + "take one of the two ways out");

    [Fact]
    public void Without_a_switch_the_brake_lights_stay_dark()
    {
        var dark = With(
            ("  master:\n", "  ^master:\n"),
            (", screws-into: rear-cross.out", string.Empty),
            ("kind: switch", "kind: plug"),
            ("ports: inverted 3/16}\n  left-rear", "ports: inverted 3/16, screws-into: rear-cross.out}\n  left-rear"));
        HasOne(dark, Severity.Warning, NoBrakeLightSwitch.Rule,
            "no brake-light switch is in a circuit of master: add a part of kind `switch`, or say `pedal-switch: true` at the top if it "
                + "sits at the pedal");
        Assert.Empty(Findings("pedal-switch: true\n" + dark));
    }

    [Fact]
    public void A_switch_that_sits_nowhere_lights_nothing()
    {
        var found = Findings(
            With(
                (", screws-into: rear-cross.out", string.Empty),
                ("rear-cross: {kind: cross, ports: inverted 3/16}", "rear-cross: {kind: tee, ports: inverted 3/16}")));
        Assert.Equal("no-brake-light-switch, open-port", Rules(found));
        Assert.StartsWith("switch stop-light is in no circuit that brakes a wheel: ", found[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_without_parts_is_silent_whatever_its_ends_are_called() =>
        Assert.Empty(Findings(TypedTemplates.LongLine("from: tee.left", "to: {at: master.front}")));

    [Fact]
    public void A_file_of_a_part_of_the_car_says_what_is_open_and_no_more() => HasOne(
        TypedTemplates.Top
            + "parts:\n  ^rear-tee: {kind: tee, ports: an-3}\n  left: {kind: wheel-cylinder}\nlines: {rl: {from: rear-tee.left, to: "
            + "left.inlet, rows: [{straight: 100}]}}\n",
        Severity.Warning,
        OpenPort.Rule,
        "nothing goes to rear-tee, ports in, right: connect them, close with a `plug`, "
            + "or leave out of its `ports` what is not on your car");

    [Fact]
    public void A_reservoir_joins_no_circuits() => Assert.Empty(Findings(
        TypedTemplates.Top
            + "parts:\n  r: {kind: reservoir, ports: [one, two]}\n  m: {kind: master-cylinder, ports: {a: {circuit: x}, b: {circuit: "
            + "y}}}\nhoses: {h: {from: r.one, to: m.a}, g: {from: r.two, to: m.b}}\n" + TypedTemplates.Line));

    [Fact]
    public void An_unknown_port_is_a_wrong_file() => Assert.Equal(RuleSubject.File, FileRules.UnknownPort.Subject);

    [Fact]
    public void A_published_thread_is_never_an_error() => HasOne(
        With(
            ("  an3: {", "  own: {flare: single 37, thread: M10x1}\n  an3: {"),
            ("to: {at: front-tee.in, fitting: an3}", "to: {at: ^front-tee.in, fitting: own}")),
        Severity.Warning,
        ThreadsDiffer.Rule,
        "end B of line front has thread M10x1, and front-tee.in has 3/8-24: one does not go into the other; use a nut with 3/8-24, or an "
            + "adapter between them (AN818 Rev 20, Figure 1: check, or type the thread that the part has)");

    /// <summary>MIL-H-8891A 3.11.4.6.</summary>
    [Fact]
    public void A_wheel_that_only_tube_leads_to_is_a_warning_at_its_name() => HasOne(
        With(("left-rear: {kind: wheel-cylinder, mounted: chassis,", "^left-rear: {kind: wheel-cylinder,")),
        Severity.Warning,
        TubeToWheel.Rule,
        "only tube leads from the master cylinder to wheel-cylinder left-rear, and a wheel moves with suspension and steering (MIL-H-8891A "
            + "3.11.4.6): put a hose between chassis and wheel, or say `mounted: chassis` in the part if the brake is fixed to the "
            + "chassis");

    /// <summary>A hose to the axle is enough for both wheels on it.</summary>
    [Fact]
    public void A_hose_anywhere_before_the_wheel_is_silent() => Assert.Empty(Findings(With(
        ("left-rear: {kind: wheel-cylinder, mounted: chassis,", "left-rear: {kind: wheel-cylinder,"),
        ("right-rear: {kind: wheel-cylinder, mounted: chassis,", "right-rear: {kind: wheel-cylinder,"),
        ($"  {Rear}, rows: [{{straight: 1700}}]}}\n", string.Empty),
        ("lines:\n", "  axle-hose: {from: master.rear, to: rear-cross.in}\nlines:\n"))));

    /// <summary>FAA AC 43.13-1B, Table 9-3: 3.00 in for hose on tube of 3/16 in.</summary>
    [Fact]
    public void A_hose_bent_tighter_than_published_is_a_warning_at_its_radius() => HasOne(
        With(("left-hose: {", "left-hose: {bent-to: ^2.99 in, ")),
        Severity.Warning,
        HoseTooTight.Rule,
        "hose left-hose is bent to a radius of 75.9 mm (2.990 in), and the smallest published for hose on tube of 3/16 in is 76.2 mm "
            + "(3.000 "
            + "in) (FAA AC 43.13-1B, Table 9-3): lead it in a wider curve, in every position of wheel and steering, or go by what its "
            + "maker "
            + "gives");

    [Fact]
    public void A_hose_of_the_published_radius_and_one_for_other_tube_are_silent()
    {
        Assert.Empty(Findings(With(("left-hose: {", "left-hose: {bent-to: 3.00 in, "))));
        Assert.Empty(Findings(Sound
            .Replace("an-3", "an-4", StringComparison.Ordinal)
            .Replace("thread: 3/8-24}\n  inverted", "thread: 7/16-20}\n  inverted", StringComparison.Ordinal)
            .Replace("od: 3/16 in", "od: 1/4 in", StringComparison.Ordinal)
            .Replace("inverted 3/16", "3/8-24 inverted 45", StringComparison.Ordinal)
            .Replace("left-hose: {", "left-hose: {bent-to: 50, ", StringComparison.Ordinal)));
    }
}
