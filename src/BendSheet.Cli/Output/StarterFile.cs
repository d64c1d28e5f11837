namespace BendSheet.Cli.Output;

/// <summary>What <c>bendsheet start</c> writes. It is a sound file as it stands: its figures are an example.</summary>
internal static class StarterFile
{
    public const string Text = """
        # Measurements of a wire template, walked from end A to end B.
        # Replace the figures by your own, then:
        #   bendsheet check FILE      is everything right?
        #   bendsheet show FILE       the figures
        #   bendsheet print FILE      the sheet for the bench

        project: my car, brake lines
        units: mm                     # a bare number means this: mm, cm, m, in or ft

        tube: {od: 3/16 in, wall: 0.028 in, material: copper-nickel}

        bender:
          radius: 9/16 in             # of your own tool, to the tube's centreline: measure it on a test bend
          mark: start                 # what the tool's own line stands over: start or middle of the bend
          # grip: 12                  # straight tube the tool needs where it holds
          # follow: 10                # straight tube it needs where it sweeps
          # tests: [{pull: 93, got: 90}]    # pulled to, and came back to: `bendsheet learn FILE` says how to make a test

        fittings:
          nut-and-sleeve:
            flare: single 37          # single 37, single 45, double 45, bubble or none
            takes: 0.5                # tube that the flare uses up: measure it on a practice piece
            slide-on: [{nut: 17}, {sleeve: 9}]    # in the order they go on, with their lengths
            straight: 35              # straight tube that flaring bar and hardware need

        # wire: {diameter: 2.4, radius: 4}        # needed where legs are measured straight, outside, inside or along
        # tolerance: {straight: 1, bend: 1.5, rotate: 3, tape: 1}   # how well you measured: 2 readings in 3 within it

        lines:
          front-left:
            # clips: {every: 300, from-ends: 60}
            from: {at: master cylinder, fitting: nut-and-sleeve}
            to: {at: hose bracket, fitting: nut-and-sleeve}
            measured: corner          # centreline corner to corner; or straight, outside, inside, along
            rows:
              # straight: up to the bend; bend: what the tube turns, 90 = square corner;
              # rotate: how the bending plane rolls before this bend, seen looking from A along the tube
              - {straight: 120, bend: 45}
              - {straight: 60, rotate: 90 cw, bend: 30}
              - {straight: 200, rotate: 45 ccw, bend: 90}
              - {straight: 80}        # the last row only goes straight, to end B
            # taped: {A-B: 327, B ahead: 225}     # measured across the wire: `bendsheet check FILE` says what helps most

        """;

    /// <summary>What every file that the program writes for somebody begins with, after a line that may name a schema.</summary>
    public static string FirstLine { get; } = Text[..Text.IndexOf('\n')];

    /// <summary>The commands that a file is made for, as comments.</summary>
    public static IEnumerable<string> Commands => Text.Split('\n').Where(line => line.StartsWith("#   ", StringComparison.Ordinal));

    /// <summary>What stands as a comment beside a word; empty where it has none.</summary>
    public static string CommentOn(string word)
    {
        var line = Text.Split('\n').FirstOrDefault(line => line.TrimStart(' ', '#').StartsWith(word + ":", StringComparison.Ordinal));
        return line?.LastIndexOf(" # ", StringComparison.Ordinal) is > 0 and var at ? line[(at + 3)..].Trim() : string.Empty;
    }
}
