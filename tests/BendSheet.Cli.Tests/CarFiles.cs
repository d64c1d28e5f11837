namespace BendSheet.Cli.Tests;

/// <summary>Small files that the tests type.</summary>
internal static class CarFiles
{
    /// <summary>Two lines that can be made.</summary>
    public const string Sound = """
        project: test car
        units: mm
        tube: {od: 3/16 in}
        bender: {radius: 15}
        lines:
          front-left:
            - {straight: 100, bend: 90}
            - {straight: 80}
          rear:
            - {straight: 60, bend: 45}
            - {straight: 70, rotate: 90 cw, bend: 30}
            - {straight: 50}
        wanted: {miss: 1 m, askew: 90}

        """;

    /// <summary>The second leg of <c>rear</c>, at 11:18, is 10 mm too short for its two bends of 90° on a radius of 15 mm.</summary>
    public const string LegTooShort = """
        project: test car
        units: mm
        tube: {od: 3/16 in}
        bender: {radius: 15}
        lines:
          front-left:
            - {straight: 100, bend: 90}
            - {straight: 80}
          rear:
            - {straight: 60, bend: 90}
            - {straight: 20, rotate: 90 cw, bend: 90}
            - {straight: 50}
        wanted: {miss: 1 m, askew: 90}

        """;

    /// <summary>A word at 7:23 that is misspelt, beside a sound line.</summary>
    public const string Misspelt = """
        project: test car
        units: mm
        tube: {od: 3/16 in}
        bender: {radius: 15}
        lines:
          front-left:
            - {straight: 100, bendd: 90}
            - {straight: 80}
          rear:
            - {straight: 60, bend: 45}
            - {straight: 50}
        wanted: {miss: 1 m, askew: 90}

        """;

    /// <summary>A U-bend on another radius than the wire's: a warning at 8:33.</summary>
    public const string WithWarning = """
        units: mm
        tube: {od: 3/16 in}
        bender: {radius: 15}
        wire: {diameter: 2.4, radius: 4}
        lines:
          loop:
            measured: straight
            rows: [{straight: 60, bend: 180}, {straight: 70}]
        wanted: {miss: 1 m, askew: 90}

        """;

    /// <summary>A thin wall, a tight tool and single flares where double ones belong, each shared by two lines.</summary>
    public const string WrongTube = """
        units: mm
        tube: {od: 3/16 in, wall: 0.6, material: steel}
        bender: {radius: 15}
        fittings:
          inverted: {flare: single 45}
          other: {flare: single 45}
        lines:
          left:
            from: {fitting: inverted}
            to: {fitting: other}
            rows: [{straight: 100, bend: 90}, {straight: 80}]
          right:
            from: {fitting: other}
            to: {fitting: inverted}
            rows: [{straight: 100, bend: 90}, {straight: 90}]
        wanted: {miss: 1 m, askew: 90}

        """;

    /// <summary>A circuit from a master cylinder through a tee and a hose to a bleed screw.</summary>
    public const string WithParts = """
        units: mm
        tube: {od: 3/16 in, wall: 0.028 in}
        bender: {radius: 15}
        wanted: {miss: 1 m, askew: 90}
        pedal-switch: true
        parts:
          master: {kind: master-cylinder, ports: {out: }}
          tee: {kind: tee, ports: {in: , left: }}
          bracket: {kind: bulkhead, ports: {in: , out: }}
          caliper: {kind: caliper, ports: {inlet: , bleeder: bleed}}
        hoses:
          left: {from: bracket.out, to: caliper.inlet, length: 350, spans: {droop: 310, lock: 330}}
        lines:
          feed: {from: master.out, to: tee.in, rows: [{straight: 300, bend: 90}, {straight: 80}]}
          front-left: {from: tee.left, to: bracket.in, rows: [{straight: 145, bend: 90}, {straight: 100}]}

        """;
}
