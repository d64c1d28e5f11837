using BendSheet.Core.Bench.Rules;
using BendSheet.Core.Car;
using BendSheet.Core.Clearance;
using BendSheet.Core.Commissioning;
using BendSheet.Core.Findings;
using BendSheet.Core.Placing;
using BendSheet.Core.Plumbing.Rules;
using BendSheet.Core.Stock;
using BendSheet.Core.Survey;
using BendSheet.Core.Survey.Pieces;
using BendSheet.Core.Templates;
using BendSheet.Files.Reading;
using BendSheet.Files.Yaml;

namespace BendSheet.Cli.Explain;

/// <summary>Every rule that a finding can name. The native program cannot look for them; a test checks that none is left out.</summary>
public static class EveryRule
{
    /// <summary>In no order that means anything.</summary>
    public static IReadOnlyList<Rule> All { get; } =
    [
        .. YamlRules.All, .. FileRules.All,
        Choice.UnknownLine, Choice.UnknownBender, Choice.WrongElsewhere,
        CornerRoute.SamePoint, CornerRoute.TurnsBack, Route.EndsInBend, RouteLayout.NoCorner, RoughLine.Rule,
        BendBeyondTool.Rule, BendTooTight.Rule, ClipsFarApart.Rule, EndTooShort.Rule, FlareAndSeat.Rule, FlareAndWall.Rule, HoldsAir.Rule,
        LegTooShort.Rule, MeetsItself.Rule, NearlyU.Rule, NoBend.Rule,
        NoClearance.Rule, NoOrder.Rule, NoPlaceForClip.Rule, NotForBrakes.Rule,
        PullDoubtful.Rule, RubsItself.Rule, SpreadChanged.Rule, TighterThanPublished.Rule, WallTooThin.Rule,
        CircuitsJoined.Rule, FlareAndTube.Rule, NoBrakeLightSwitch.Rule, OpenPort.Rule, PortUsedTwice.Rule, Ring.Rule, SeatsDiffer.Rule,
        HoseTooShort.Rule, HoseTooTight.Rule, TubeToWheel.Rule,
        TaperAgainstStraight.Rule, ThreadsDiffer.Rule, WheelNotReached.Rule,
        BleederLow.Rule, ClearanceRules.LinesTooNear, ClearanceRules.NotClear, PortRules.TemplateOffPort,
        SurveyRules.FarEndUnsure, SurveyRules.MeasuredApart, PieceRules.FinishedDiffers,
        TapedRules.CornerNumbers, TapedRules.NoDistance, TapedRules.DistanceSaidTwice, TapedRules.DistanceMissing,
        TapedRules.TriangleImpossible, TapedRules.CornerInLine, TapedRules.RotationImpossible, TapedRules.SideMissing,
        TapedRules.SideOutOfPlace, TapedRules.SideContradicted, TapedRules.TakenAsFlat, TapedRules.DistanceMisfit,
        StockRules.TooSmall, StockRules.PieceTooLong, StockRules.NotProven, StockRules.LeftNotTyped,
        OnHand.Unclear, OnHand.NotNeeded, OnHand.UsedSince,
    ];
}
