namespace Litterfall.Domain.Units;

/// <summary>A typed amount in SI.</summary>
public interface IQuantity<TSelf>
    where TSelf : struct, IQuantity<TSelf>
{
    /// <summary>What people may write for it.</summary>
    static abstract QuantityKind Kind { get; }

    /// <summary>From a value in SI.</summary>
    static abstract TSelf FromSi(double si);

    /// <summary>Value in SI.</summary>
    double Si { get; }
}

/// <summary>Length in meters.</summary>
public readonly record struct Length(double Meters) : IQuantity<Length>
{
    /// <inheritdoc/>
    public static QuantityKind Kind => QuantityKinds.Length;

    /// <inheritdoc/>
    public static Length FromSi(double si) => new(si);

    /// <inheritdoc/>
    public double Si => Meters;
}

/// <summary>Area in square meters.</summary>
public readonly record struct Area(double SquareMeters) : IQuantity<Area>
{
    /// <inheritdoc/>
    public static QuantityKind Kind => QuantityKinds.Area;

    /// <inheritdoc/>
    public static Area FromSi(double si) => new(si);

    /// <inheritdoc/>
    public double Si => SquareMeters;
}

/// <summary>Volume in cubic meters.</summary>
public readonly record struct Volume(double CubicMeters) : IQuantity<Volume>
{
    /// <inheritdoc/>
    public static QuantityKind Kind => QuantityKinds.Volume;

    /// <inheritdoc/>
    public static Volume FromSi(double si) => new(si);

    /// <inheritdoc/>
    public double Si => CubicMeters;
}

/// <summary>Mass in kilograms.</summary>
public readonly record struct Mass(double Kilograms) : IQuantity<Mass>
{
    /// <inheritdoc/>
    public static QuantityKind Kind => QuantityKinds.Mass;

    /// <inheritdoc/>
    public static Mass FromSi(double si) => new(si);

    /// <inheritdoc/>
    public double Si => Kilograms;
}

/// <summary>A temperature (a point on the scale) in kelvin.</summary>
public readonly record struct Temperature(double Kelvins) : IQuantity<Temperature>
{
    /// <inheritdoc/>
    public static QuantityKind Kind => QuantityKinds.Temperature;

    /// <inheritdoc/>
    public static Temperature FromSi(double si) => new(si);

    /// <inheritdoc/>
    public double Si => Kelvins;
}

/// <summary>A difference of temperatures in kelvin.</summary>
public readonly record struct TemperatureDifference(double Kelvins) : IQuantity<TemperatureDifference>
{
    /// <inheritdoc/>
    public static QuantityKind Kind => QuantityKinds.TemperatureDifference;

    /// <inheritdoc/>
    public static TemperatureDifference FromSi(double si) => new(si);

    /// <inheritdoc/>
    public double Si => Kelvins;
}

/// <summary>A share of a whole, 0 to 1.</summary>
public readonly record struct Share(double Fraction) : IQuantity<Share>
{
    /// <inheritdoc/>
    public static QuantityKind Kind => QuantityKinds.Share;

    /// <inheritdoc/>
    public static Share FromSi(double si) => new(si);

    /// <inheritdoc/>
    public double Si => Fraction;
}

/// <summary>Volume flow in cubic meters per second.</summary>
public readonly record struct Flow(double CubicMetersPerSecond) : IQuantity<Flow>
{
    /// <inheritdoc/>
    public static QuantityKind Kind => QuantityKinds.Flow;

    /// <inheritdoc/>
    public static Flow FromSi(double si) => new(si);

    /// <inheritdoc/>
    public double Si => CubicMetersPerSecond;
}

/// <summary>Height over the sea in meters.</summary>
public readonly record struct Elevation(double Meters) : IQuantity<Elevation>
{
    /// <inheritdoc/>
    public static QuantityKind Kind => QuantityKinds.Elevation;

    /// <inheritdoc/>
    public static Elevation FromSi(double si) => new(si);

    /// <inheritdoc/>
    public double Si => Meters;
}

/// <summary>Time span in seconds.</summary>
public readonly record struct Duration(double Seconds) : IQuantity<Duration>
{
    /// <inheritdoc/>
    public static QuantityKind Kind => QuantityKinds.Duration;

    /// <inheritdoc/>
    public static Duration FromSi(double si) => new(si);

    /// <inheritdoc/>
    public double Si => Seconds;
}

/// <summary>Power in watts.</summary>
public readonly record struct Power(double Watts) : IQuantity<Power>
{
    /// <inheritdoc/>
    public static QuantityKind Kind => QuantityKinds.Power;

    /// <inheritdoc/>
    public static Power FromSi(double si) => new(si);

    /// <inheritdoc/>
    public double Si => Watts;
}

/// <summary>Luminous flux in lumens.</summary>
public readonly record struct LuminousFlux(double Lumens) : IQuantity<LuminousFlux>
{
    /// <inheritdoc/>
    public static QuantityKind Kind => QuantityKinds.LuminousFlux;

    /// <inheritdoc/>
    public static LuminousFlux FromSi(double si) => new(si);

    /// <inheritdoc/>
    public double Si => Lumens;
}

/// <summary>How often the air is replaced, per second.</summary>
public readonly record struct AirChangeRate(double PerSecond) : IQuantity<AirChangeRate>
{
    /// <inheritdoc/>
    public static QuantityKind Kind => QuantityKinds.AirChangeRate;

    /// <inheritdoc/>
    public static AirChangeRate FromSi(double si) => new(si);

    /// <inheritdoc/>
    public double Si => PerSecond;
}

/// <summary>Electric current in amperes.</summary>
public readonly record struct ElectricCurrent(double Amperes) : IQuantity<ElectricCurrent>
{
    /// <inheritdoc/>
    public static QuantityKind Kind => QuantityKinds.ElectricCurrent;

    /// <inheritdoc/>
    public static ElectricCurrent FromSi(double si) => new(si);

    /// <inheritdoc/>
    public double Si => Amperes;
}

/// <summary>Angle in radians.</summary>
public readonly record struct Angle(double Radians) : IQuantity<Angle>
{
    /// <inheritdoc/>
    public static QuantityKind Kind => QuantityKinds.Angle;

    /// <inheritdoc/>
    public static Angle FromSi(double si) => new(si);

    /// <inheritdoc/>
    public double Si => Radians;
}

/// <summary>Illuminance in lux.</summary>
public readonly record struct Illuminance(double Lux) : IQuantity<Illuminance>
{
    /// <inheritdoc/>
    public static QuantityKind Kind => QuantityKinds.Illuminance;

    /// <inheritdoc/>
    public static Illuminance FromSi(double si) => new(si);

    /// <inheritdoc/>
    public double Si => Lux;
}

/// <summary>Photons of 400 to 700 nm in moles per second.</summary>
public readonly record struct PhotonFlux(double MolesPerSecond) : IQuantity<PhotonFlux>
{
    /// <inheritdoc/>
    public static QuantityKind Kind => QuantityKinds.PhotonFlux;

    /// <inheritdoc/>
    public static PhotonFlux FromSi(double si) => new(si);

    /// <inheritdoc/>
    public double Si => MolesPerSecond;
}

/// <summary>A typed value of any kind.</summary>
public interface ITyped
{
    /// <summary>Value in SI.</summary>
    double Si { get; }

    /// <summary>The text as typed.</summary>
    string Text { get; }
}

/// <summary>A quantity together with the text a person typed for it, e.g. "17 3/4 in".</summary>
public readonly record struct Typed<T>(T Value, string Text) : ITyped
    where T : struct, IQuantity<T>
{
    /// <summary>Value in SI.</summary>
    public double Si => Value.Si;

    /// <summary>The text as typed.</summary>
    public override string ToString() => Text;
}
