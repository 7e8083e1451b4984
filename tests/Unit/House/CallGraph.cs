using System.Collections.Frozen;
using System.Reflection;
using System.Reflection.Emit;

namespace Litterfall.UnitTests.House;

/// <summary>
/// What the program can come to from its start: every call, field and constructed type in the bodies of
/// methods, read from the built assemblies. Calls through an interface or a base reach all that overrides
/// them.
/// </summary>
internal sealed class CallGraph
{
    private const BindingFlags All =
        BindingFlags.Public
        | BindingFlags.NonPublic
        | BindingFlags.Static
        | BindingFlags.Instance
        | BindingFlags.DeclaredOnly;

    private static readonly FrozenDictionary<short, OpCode> Codes = typeof(OpCodes)
        .GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(f => (OpCode)f.GetValue(null)!)
        .ToFrozenDictionary(c => c.Value);

    private readonly FrozenSet<Assembly> _walked;
    private readonly HashSet<MethodBase> _reached = [];
    private readonly HashSet<Type> _types = [];
    private readonly Queue<MethodBase> _open = new();

    /// <param name="walked">Assemblies whose bodies are followed.</param>
    /// <param name="roots">Assemblies of which all is taken as called.</param>
    public CallGraph(IReadOnlyCollection<Assembly> walked, IReadOnlyCollection<Assembly> roots)
    {
        _walked = walked.Concat(roots).ToFrozenSet();
        foreach (var method in roots.SelectMany(r => r.GetTypes()).SelectMany(Methods))
        {
            Reach(method);
        }

        while (_open.TryDequeue(out var next))
        {
            Follow(next);
        }
    }

    public bool Reaches(MethodBase method) => _reached.Contains(Definition(method));

    public static IEnumerable<MethodBase> Methods(Type type) =>
        type.GetMethods(All).Cast<MethodBase>().Concat(type.GetConstructors(All));

    private static MethodBase Definition(MethodBase method)
    {
        if (method is MethodInfo { IsGenericMethod: true } generic)
        {
            method = generic.GetGenericMethodDefinition();
        }

        return method.DeclaringType is { IsConstructedGenericType: true } type
            ? MethodBase.GetMethodFromHandle(
                method.MethodHandle,
                type.GetGenericTypeDefinition().TypeHandle
            )!
            : method;
    }

    private void Reach(MethodBase method)
    {
        if (!_walked.Contains(method.Module.Assembly))
        {
            return;
        }

        var definition = Definition(method);
        if (_reached.Add(definition))
        {
            _open.Enqueue(definition);
            Meet(definition.DeclaringType!);
        }
    }

    /// <summary>A type in use runs its static constructor; what it answers may be called.</summary>
    private void Meet(Type type)
    {
        MeetAll(type.GetGenericArguments());
        type = type.IsConstructedGenericType ? type.GetGenericTypeDefinition() : type;
        if (!_walked.Contains(type.Assembly) || !_types.Add(type))
        {
            return;
        }

        foreach (var method in Methods(type))
        {
            if (
                method is ConstructorInfo { IsStatic: true }
                || (method is MethodInfo own && (own.IsVirtual || own.IsStatic) && IsAnswer(own, type))
            )
            {
                Reach(method);
            }
        }

        if (type.BaseType is { } parent)
        {
            Meet(parent);
        }
    }

    private void MeetAll(Type[] arguments)
    {
        foreach (var argument in arguments.Where(a => !a.IsGenericParameter && !a.HasElementType))
        {
            Meet(argument);
        }
    }

    private static bool IsAnswer(MethodInfo method, Type type) =>
        (method.IsVirtual && method.GetBaseDefinition().DeclaringType != type)
        || (
            !type.IsInterface
            && type.GetInterfaces()
                .Any(i =>
                    method.IsStatic
                        ? i.GetMethods(All).Any(m => m.IsStatic && m.Name == method.Name)
                        : type.GetInterfaceMap(i).TargetMethods.Contains(method)
                )
        );

    private void Follow(MethodBase method)
    {
        var il = method.GetMethodBody()?.GetILAsByteArray() ?? [];
        for (var at = 0; at < il.Length;)
        {
            short value = il[at++];
            if (value == 0xFE)
            {
                value = (short)(0xFE00 | il[at++]);
            }

            var code = Codes[value];
            if (
                code.OperandType
                is OperandType.InlineMethod
                    or OperandType.InlineTok
                    or OperandType.InlineType
                    or OperandType.InlineField
            )
            {
                Touch(method, BitConverter.ToInt32(il, at));
            }

            at += Length(code, il, at);
        }
    }

    private void Touch(MethodBase method, int token)
    {
        var type = method.DeclaringType!;
        var member = method.Module.ResolveMember(
            token,
            type.IsGenericType ? type.GetGenericArguments() : null,
            method is MethodInfo { IsGenericMethod: true } ? method.GetGenericArguments() : null
        );
        switch (member)
        {
            case MethodBase called:
                Reach(called);
                MeetAll(called is MethodInfo { IsGenericMethod: true } ? called.GetGenericArguments() : []);
                Meet(called.DeclaringType!);
                break;
            case FieldInfo field:
                Meet(field.DeclaringType!);
                break;
            case Type used when !used.IsGenericParameter && !used.HasElementType:
                Meet(used);
                break;
            default:
                break;
        }
    }

    private static int Length(OpCode code, byte[] il, int at) =>
        code.OperandType switch
        {
            OperandType.InlineNone => 0,
            OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
            OperandType.InlineVar => 2,
            OperandType.InlineI8 or OperandType.InlineR => 8,
            OperandType.InlineSwitch => 4 + 4 * BitConverter.ToInt32(il, at),
            _ => 4,
        };
}
