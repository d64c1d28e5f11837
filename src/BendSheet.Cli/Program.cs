Console.WriteLine("bendsheet");
