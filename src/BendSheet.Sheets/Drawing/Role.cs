namespace BendSheet.Sheets.Drawing;

/// <summary>What a part of a page is to somebody who has it read out.</summary>
public enum Role
{
    /// <summary>A paragraph.</summary>
    Text,

    /// <summary>Nothing by itself: its own parts say what they are, or it is empty.</summary>
    Nothing,

    /// <summary>The name of what a sheet is about.</summary>
    Title,

    /// <summary>Heading of a part.</summary>
    Heading,

    /// <summary>A step or remark of a list; those that follow one another are one list.</summary>
    ListItem,

    /// <summary>A row of a table, of head cells or others; rows that follow one another are one table.</summary>
    Row,

    /// <summary>A cell that is the head of its column; inside a row.</summary>
    ColumnHead,

    /// <summary>A cell that is the head of its row; inside a row.</summary>
    RowHead,

    /// <summary>Any other cell; inside a row.</summary>
    Cell,

    /// <summary>A drawing with an alternative text; what is written in it is part of it.</summary>
    Figure,

    /// <summary>Not read out: rules, boxes to tick, the foot, and what is repeated on the next page.</summary>
    Decoration,
}
