using System.Buffers;
using System.Text;
using System.Text.Json;
using BendSheet.Core.Car;
using BendSheet.Core.Stock;

namespace BendSheet.Cli.Output;

/// <summary>Tube, cutting plan and shopping list for another program: millimetres, unrounded.</summary>
public static class StockJson
{
    /// <summary>One JSON document, with a line end after it.</summary>
    public static string Write(CarPlan plan)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, SolvedJson.Options))
        {
            json.WriteStartObject();
            json.WriteString("project", plan.Measured.Project);
            json.WriteValues("tubes", plan.Stock.Plan.Tubes, tube => WriteTube(json, tube));
            WriteNames(json, "notCounted", plan.Stock.Plan.NotCounted);
            json.WriteValues("shopping", plan.Stock.Shopping.Items, item => WriteItem(json, item));
            SolvedJson.WriteFindings(json, plan.Stock.Findings);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    private static void WriteTube(Utf8JsonWriter json, TubePlan tube)
    {
        json.WriteStartObject();
        json.WriteString("tube", tube.Tube.Name);
        SolvedJson.WriteLength(json, "od", tube.Tube.OutsideDiameter);
        SolvedJson.WriteLength(json, "wall", tube.Tube.Wall);
        json.WriteString("material", tube.Tube.Material);
        SolvedJson.WriteLength(json, "lines", tube.Need.Of(PieceUse.Line));
        SolvedJson.WriteLength(json, "rough", tube.Need.Of(PieceUse.Rough));
        SolvedJson.WriteLength(json, "practice", tube.Need.Of(PieceUse.Practice) + tube.Need.Of(PieceUse.PracticeBend));
        SolvedJson.WriteLength(json, "cuttingLosses", tube.Need.CuttingLosses);
        SolvedJson.WriteLength(json, "spare", tube.Need.Spare);
        SolvedJson.WriteLength(json, "needed", tube.Need.Total);
        SolvedJson.WriteLength(json, "left", tube.Left);
        if (tube.Plan is { } plan)
        {
            WritePlan(json, plan);
        }

        json.WriteEndObject();
    }

    private static void WritePlan(Utf8JsonWriter json, CuttingPlan plan)
    {
        json.WriteBoolean("fits", plan.Fits);
        json.WriteNumber("buy", plan.Bought);
        json.WriteNumber("buyAtLeast", plan.BoughtAtLeast);
        SolvedJson.WriteLength(json, "buyLength", plan.ToBuy?.Length);
        if (plan.Cost is { } cost)
        {
            json.WriteNumber("cost", cost);
        }

        SolvedJson.WriteLength(json, "longestLeft", plan.LongestLeft);
        SolvedJson.WriteLength(json, "longestLeftAtMost", plan.LongestLeftAtMost);
        json.WriteNumber("cut", plan.Cut);
        json.WriteNumber("cutAtLeast", plan.CutAtLeast);
        json.WriteBoolean("measuredFirst", plan.MeasuredFirst);
        WriteNames(json, "tooLong", plan.TooLong.Select(piece => piece.Name));
        json.WriteObjects("rolls", plan.Rolls, roll =>
        {
            json.WriteString("name", roll.Name);
            json.WriteBoolean("new", roll.IsBought);
            json.WriteNumber("count", roll.Count);
            SolvedJson.WriteLength(json, "before", roll.Before);
            json.WriteObjects("cuts", roll.Cuts, cut =>
            {
                json.WriteString("piece", cut.Piece.Name);
                json.WriteBoolean("line", !cut.Piece.IsPractice);
                json.WriteBoolean("doNotCut", cut.Piece.Use == PieceUse.Rough);
                SolvedJson.WriteLength(json, "from", cut.From);
                SolvedJson.WriteLength(json, "to", cut.To);
                SolvedJson.WriteLength(json, "length", cut.Piece.Length);
                SolvedJson.WriteLength(json, "left", cut.Left);
            });
            SolvedJson.WriteLength(json, "left", roll.Left);
        });
    }

    private static void WriteItem(Utf8JsonWriter json, ShoppingItem item)
    {
        json.WriteStartObject();
        json.WriteString("name", item.Name);
        json.WriteString("specification", item.Specification);
        json.WriteNumber("needed", item.Count);
        json.WriteNumber("have", item.Have);
        json.WriteNumber("buy", item.ToBuy);
        WriteNames(json, "usedAt", item.UsedAt);
        json.WriteEndObject();
    }

    private static void WriteNames(Utf8JsonWriter json, string name, IEnumerable<string> values)
    {
        json.WriteValues(name, values, value => json.WriteStringValue(value));
    }
}
