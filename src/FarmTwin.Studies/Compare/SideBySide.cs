using FarmTwin.Farm.Description;
using FarmTwin.Studies.Outcomes;

namespace FarmTwin.Studies.Compare;

/// <summary>Farms under one seed: where they part, the first sign, and what acting then would save.</summary>
/// <param name="Seed">Seed of all chance.</param>
/// <param name="Days">Days compared.</param>
/// <param name="Start">Day 0.</param>
/// <param name="Currency">Currency of the prices; empty where there are none.</param>
/// <param name="Reference">The farm that the others are held against.</param>
/// <param name="Others">The others, in the order given.</param>
public sealed record SideBySide(ulong Seed, int Days, DateOnly Start, string Currency, ComparedFarm Reference, IReadOnlyList<ComparedPair> Others);

/// <summary>A farm of a comparison.</summary>
/// <param name="Name">Its file.</param>
/// <param name="Title">Its title.</param>
/// <param name="Outcome">What it came to.</param>
/// <param name="Dead">Fish that died.</param>
public sealed record ComparedFarm(string Name, string Title, SeasonOutcome Outcome, double Dead);

/// <summary>A farm held against the reference.</summary>
/// <param name="Farm">The farm.</param>
/// <param name="Partings">The lines on which a person sees them part, the earliest first.</param>
/// <param name="Sign">The sign on which a person would act: the first reading that worries on this farm and not on the other; the first difference where none does; null where none is seen.</param>
/// <param name="ActingReason">Why the farm can or cannot go on as the reference has it.</param>
/// <param name="Ways">What acting on the sign would have saved.</param>
public sealed record ComparedPair(
    ComparedFarm Farm, IReadOnlyList<LineParting> Partings, LineParting? Sign, string ActingReason, IReadOnlyList<WayOfActing> Ways);

/// <summary>A remedy that a scenario of a cause states.</summary>
/// <param name="About">What is done.</param>
/// <param name="Farm">The farm with the remedy on the days that the file has for it.</param>
public sealed record StatedRemedy(string About, FarmDescription Farm);

/// <summary>A way of acting on the sign, with each delay.</summary>
/// <param name="Key">Its name in files ("asReference", "remedy", "care", "both").</param>
/// <param name="InWords">What is done.</param>
/// <param name="Acts">Each delay.</param>
public sealed record WayOfActing(string Key, string InWords, IReadOnlyList<Act> Acts);

/// <summary>Acting at one time.</summary>
/// <param name="When">When, in words ("that evening", "15 min after it broke").</param>
/// <param name="Delay">Days after the sign's evening; below 0 where a fault is answered by the minute.</param>
/// <param name="Seconds">When, seconds of the season.</param>
/// <param name="Farm">What the farm then came to.</param>
/// <param name="FishSaved">Fish that live because of it.</param>
/// <param name="FishKgSaved">Fish sold and standing at the end more, kg.</param>
/// <param name="HeadsSaved">First-grade heads more.</param>
/// <param name="CropKgSaved">Crops fit for sale more, kg.</param>
/// <param name="MoneySaved">Margin more; not a number without prices.</param>
/// <param name="WorstClosure">Largest closure error of any ledger of the branch.</param>
/// <param name="SignDays">The values of the sign's line in the branch, by day.</param>
public sealed record Act(
    string When, double Delay, long Seconds, ComparedFarm Farm, double FishSaved, double FishKgSaved, double HeadsSaved, double CropKgSaved, double MoneySaved, double WorstClosure, double[] SignDays);
