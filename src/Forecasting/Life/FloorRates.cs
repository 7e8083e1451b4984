using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Crew;

namespace Litterfall.Forecasting.Life;

/// <summary>Rates of the floor's life from their coefficients.</summary>
internal static class FloorRates
{
    /// <summary>All of them.</summary>
    /// <param name="with">Coefficients.</param>
    public static FloorLifeRates Of(FloorLifeCoefficients with) =>
        new()
        {
            Frogs = Frogs(with),
            Damp = Damp(with),
            Decay = Decay(with),
            MicrobialShare = with.MicrobialShare.Use(),
            GrazedShare = with.GrazedShare.Use(),
            MeanGrams = with.MeanSpringtail.Use() / 1e6,
            IngestedPerDay = with.Ingested.Use(),
            IngestionQ10 = with.IngestionQ10.Use(),
            FaunaEffect = with.FaunaEffect.Use(),
            FaunaFull = with.FaunaFull.Use(),
            SearchSquareMeters = with.Searched.UseSi(),
            HandlingDays = with.Handling.Use() / 1440,
            MostTaken = with.MostTaken.Use(),
            DroppingsRotPerDay = with.DroppingsRot.Use(),
        };

    private static FrogNeeds Frogs(FloorLifeCoefficients with) =>
        new()
        {
            SmallFlyJoules = with.FlyEnergy.Use(),
            FlyDryMilligrams = with.FlyDry.Use(),
            SpringtailJoules = with.SpringtailEnergy.Use(),
            OxygenPerHour = with.Oxygen.Use(),
            MassExponent = with.MassExponent.Use(),
            Q10 = with.FrogQ10.Use(),
            OxygenJoules = with.OxygenEnergy.Use(),
            Metabolizable = with.Metabolizable.Use(),
            Indigestible = with.Indigestible.Use(),
            NitrogenShare = with.FlyNitrogen.Use(),
            TooSmall = with.TooSmall.Use(),
            SmallSeen = with.SmallSeen.Use(),
            LargeTaken = with.LargeTaken.Use(),
            TooLarge = with.TooLarge.Use(),
        };

    private static GroundDamp Damp(FloorLifeCoefficients with) =>
        new()
        {
            LaysFully = with.LaysFully.Use(),
            LaysNoMore = with.LaysNoMore.Use(),
            GrowsFully = with.GrowsFully.Use(),
            GrowsNoMore = with.GrowsNoMore.Use(),
            LeastAir = with.LeastAir.Use(),
            EggsDrownPerDay = with.EggsDrown.Use(),
            AnimalsDrownPerDay = with.AnimalsDrown.Use(),
        };

    private static LitterDecay Decay(FloorLifeCoefficients with) =>
        new()
        {
            WetKilopascals = with.WetLitter.Use(),
            DryKilopascals = with.DryLitter.Use(),
            DryShare = with.DryShare.Use(),
            AirFactor = with.AirFactor.Use(),
            AirExponent = with.AirExponent.Use(),
        };
}
