namespace Layshaft.Engineering.Life;

/// <summary>Posts events one by one. Every contradiction is reported and then read in the way that counts no use twice and loses none.</summary>
internal sealed class LedgerPosting
{
    private readonly List<LedgerContradiction> contradictions = [];
    private readonly List<OpenLife> lives = [];
    private readonly Dictionary<(string Unit, string Part), OpenLife> places = []; // the last part seen in each place
    private readonly Dictionary<(string Serial, string Part), OpenLife> serials = [];
    private readonly UnitUses units;
    private (DateOnly Date, int Event)? latest;

    public LedgerPosting() => units = new UnitUses(contradictions);

    public PartLedger Ledger() =>
        new([.. lives.Select(life => life.Closed(life.Unit is null ? null : units.Last(life.Unit)))], contradictions);

    public void Post(FittingEvent entry, int at)
    {
        var before = contradictions.Count;
        if (latest is { } last && entry.Date < last.Date)
        {
            Report(LedgerContradictionKind.DateWentBack, null, [last.Event, at],
                FormattableString.Invariant($"{entry.Date:yyyy-MM-dd} comes after an entry of {last.Date:yyyy-MM-dd}. Put the entries in order or correct the date."));
        }
        else
        {
            latest = (entry.Date, at);
        }

        if (units.Note(entry.Unit, entry.Date, entry.UnitUse, at) is not { } use)
        {
            Touch(InPlace(entry.Unit, entry.Part.Part), at);
            return;
        }

        var life = entry.Kind switch
        {
            FittingKind.FittedNew => FitNew(entry, use, at),
            FittingKind.FittedUsed => FitUsed(entry, use, at),
            FittingKind.Removed => Remove(entry, use, at),
            FittingKind.Moved => Move(entry, use, at),
            FittingKind.Renewed => Renew(entry, use, at),
            _ => Confirm(entry, use, at),
        };
        life?.Events.Add(at);
        // An old part without a record casts no doubt on the new one in its place.
        if (life is not null && contradictions.Skip(before).Any(found => found.Kind != LedgerContradictionKind.RenewedButNeverFitted))
        {
            life.IsDoubtful = true;
        }
    }

    private OpenLife FitNew(FittingEvent entry, Use use, int at)
    {
        if (Known(entry) is { } past)
        {
            if (past.Unit is { } holder && holder != entry.Unit)
            {
                LeaveOtherUnit(past, holder, entry.Unit, at);
            }
            else
            {
                Report(LedgerContradictionKind.NewPartHasAPast, past, [past.Events[^1], at],
                    $"{entry.Part} is fitted as new, but an earlier entry has it. Write its usage, or correct the serial.");
            }
        }

        ClearPlace(entry, use, at);
        return Begin(entry, use, entry.CarriedUse is null ? LifeStart.New : LifeStart.UsedKnown);
    }

    private OpenLife FitUsed(FittingEvent entry, Use use, int at)
    {
        var life = Known(entry);
        if (entry.Part.Serial is null && places.TryGetValue((entry.Unit, entry.Part.Part), out var last)
            && last.End != LifeEnd.Renewed && last.Part.Serial is null)
        {
            life = last; // without a serial the part last seen in this place is taken for it
        }

        return Refit(life, entry, use, at);
    }

    private OpenLife? Remove(FittingEvent entry, Use use, int at)
    {
        if (InPlace(entry.Unit, entry.Part.Part) is not { } life)
        {
            Report(LedgerContradictionKind.RemovedButNeverFitted, null, [at],
                $"{entry.Part} is removed from unit {entry.Unit}, but no entry fitted it. Add the job that fitted it.");
            return null;
        }

        CheckSerial(life, entry, at);
        life.TakeOut(entry.Date, use, LifeEnd.OnTheShelf);
        return life;
    }

    private OpenLife Renew(FittingEvent entry, Use use, int at)
    {
        var old = InPlace(entry.Unit, entry.Part.Part);
        if (old is null)
        {
            Report(LedgerContradictionKind.RenewedButNeverFitted, null, [at],
                $"{entry.Part.Part} of unit {entry.Unit} is renewed, but no entry fitted the old one. Its life is not counted.");
        }
        else
        {
            old.Events.Add(at);
            old.TakeOut(entry.Date, use, LifeEnd.Renewed, entry.Reason);
        }

        // The serial of the part that came out may have been written down: the new one then has none.
        var written = entry.Part.Serial is not null && entry.Part.Serial == old?.Part.Serial
            ? entry with { Part = entry.Part with { Serial = null } }
            : entry;
        return written.CarriedUse is null ? FitNew(written, use, at) : FitUsed(written, use, at);
    }

    private OpenLife Move(FittingEvent entry, Use use, int at)
    {
        var life = Known(entry) ?? (entry.FromUnit is null ? null : InPlace(entry.FromUnit, entry.Part.Part));
        if (life is null)
        {
            Report(LedgerContradictionKind.MovedButNeverFitted, null, [at],
                $"{entry.Part} is moved to unit {entry.Unit}, but no entry fitted it to its previous unit. Add that job, or write its usage.");
        }
        else if (life.Unit is not null && life.Unit == (entry.FromUnit ?? life.Unit) && life.Unit != entry.Unit)
        {
            if (entry.FromUnitUse is { } left && units.Note(life.Unit, entry.Date, left, at) is { } counted)
            {
                life.TakeOut(entry.Date, counted, LifeEnd.OnTheShelf);
            }
            else
            {
                Report(LedgerContradictionKind.Gap, life, [life.Events[^1], at],
                    $"{entry.Part} is moved from unit {life.Unit}, whose usage at that time is not known. Write it; until then its last known usage counts.");
                life.TakeOut(entry.Date, units.Last(life.Unit)!.Value.Use, LifeEnd.OnTheShelf);
            }
        }

        return Refit(life, entry, use, at);
    }

    private OpenLife Confirm(FittingEvent entry, Use use, int at)
    {
        if (InPlace(entry.Unit, entry.Part.Part) is { } inPlace)
        {
            if (CheckSerial(inPlace, entry, at))
            {
                return inPlace;
            }

            inPlace.TakeOut(entry.Date, use, LifeEnd.OnTheShelf);
        }

        var life = Known(entry);
        if (life is { End: LifeEnd.OnTheShelf })
        {
            Report(LedgerContradictionKind.Gap, life, [life.Events[^1], at],
                $"{entry.Part} is in unit {entry.Unit}, but no entry fitted it after it was removed. Add the job that fitted it.");
        }

        return Refit(life, entry, use, at);
    }

    /// <summary>Fits a part that has a past: the one the ledger knows, or one that begins here.</summary>
    private OpenLife Refit(OpenLife? life, FittingEvent entry, Use use, int at)
    {
        if (life is { End: LifeEnd.Renewed })
        {
            Report(LedgerContradictionKind.NewPartHasAPast, life, [life.Events[^1], at],
                $"{entry.Part} was renewed but is fitted again. If it was kept, write it as removed, not renewed.");
            life = null;
        }

        if (life is not null && life.Unit == entry.Unit && life.Part.Part == entry.Part.Part)
        {
            Report(LedgerContradictionKind.FittedTwice, life, [life.Events[^1], at],
                $"{entry.Part} is already in unit {entry.Unit}. Add the entry that removed it, or remove this one.");
            return life;
        }

        if (life?.Unit is { } holder)
        {
            LeaveOtherUnit(life, holder, entry.Unit, at);
        }

        ClearPlace(entry, use, at);
        if (life is null)
        {
            return Begin(entry, use, entry.CarriedUse is null ? LifeStart.UsedUnknown : LifeStart.UsedKnown);
        }

        CompareCarried(life, entry, at);
        Fit(life, entry, use);
        return life;
    }

    private void CompareCarried(OpenLife life, FittingEvent entry, int at)
    {
        const double Rounding = 0.05; // uses are written to a tenth
        if (entry.CarriedUse is not { } stated)
        {
            return;
        }

        var more = stated.Amount - (life.Total.In(stated.Measure) ?? 0);
        if (Math.Abs(more) > Rounding)
        {
            Report(more > 0 ? LedgerContradictionKind.Gap : LedgerContradictionKind.UseWentBack, life, [life.Events[^1], at],
                $"{entry.Part} has a written usage of {stated}, but the entries add up to {stated with { Amount = stated.Amount - more }}. The larger counts. Add what is missing or correct the usage.");
        }

        if (more > Rounding)
        {
            life.Carry(stated with { Amount = more });
        }
    }

    private void LeaveOtherUnit(OpenLife life, string holder, string unit, int at)
    {
        var last = units.Last(holder)!.Value;
        Report(LedgerContradictionKind.InTwoUnitsAtOnce, life, [life.Events[^1], at],
            $"{life.Part} is fitted to unit {unit} while it is still in unit {holder}. Add the job that removed it there.");
        life.TakeOut(last.Date, last.Use, LifeEnd.OnTheShelf);
    }

    private void ClearPlace(FittingEvent entry, Use use, int at)
    {
        if (InPlace(entry.Unit, entry.Part.Part) is { } other)
        {
            Report(LedgerContradictionKind.PlaceTaken, other, [other.Events[^1], at],
                $"{entry.Part} is fitted to unit {entry.Unit} where {other.Part} is still fitted. Write it as renewed, or add the entry that removed the other part.");
            other.TakeOut(entry.Date, use, LifeEnd.OnTheShelf);
        }
    }

    private bool CheckSerial(OpenLife life, FittingEvent entry, int at)
    {
        if (entry.Part.Serial is null || life.Part.Serial is null || entry.Part.Serial == life.Part.Serial)
        {
            return true;
        }

        Report(LedgerContradictionKind.SerialDisagrees, life, [life.Events[^1], at],
            $"Unit {entry.Unit} contains {life.Part}, but this entry names {entry.Part}. Correct the serial or add the job that changed it.");
        return false;
    }

    private OpenLife Begin(FittingEvent entry, Use use, LifeStart start)
    {
        var life = new OpenLife(entry.Part, start, entry.CarriedUse is { } carried ? UseTally.Nothing.Plus(carried) : UseTally.Nothing);
        lives.Add(life);
        if (entry.Part.Serial is { } serial)
        {
            serials[(serial, entry.Part.Part)] = life;
        }

        Fit(life, entry, use);
        return life;
    }

    private void Fit(OpenLife life, FittingEvent entry, Use use)
    {
        life.Fit(entry.Unit, entry.Date, use);
        places[(entry.Unit, entry.Part.Part)] = life;
    }

    private OpenLife? InPlace(string unit, string part) =>
        places.TryGetValue((unit, part), out var life) && life.Unit == unit ? life : null;

    // Makers may use one serial twice on different kinds of part: the kind is compared too.
    private OpenLife? Known(FittingEvent entry) =>
        entry.Part.Serial is { } serial && serials.TryGetValue((serial, entry.Part.Part), out var life) ? life : null;

    private static void Touch(OpenLife? life, int at)
    {
        if (life is not null)
        {
            life.IsDoubtful = true;
            life.Events.Add(at);
        }
    }

    private void Report(LedgerContradictionKind kind, OpenLife? life, int[] events, string words)
    {
        contradictions.Add(new LedgerContradiction(kind, events, words));
        if (life is not null)
        {
            life.IsDoubtful = true;
        }
    }
}
