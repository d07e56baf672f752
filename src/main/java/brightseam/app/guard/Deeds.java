package brightseam.app.guard;

import brightseam.kernel.Origin;
import brightseam.people.Signer;
import brightseam.traveller.shell.Actor;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/**
 * Finds what people can have done: the public methods of services that are told who asks, by an {@link Origin}, an
 * {@link Actor}, a {@link Signer}, or a command that carries its origin. A deed is named by its command where a method
 * takes any of a family, else by class and method: {@code HeatCommand.PutOnHold}, {@code TravellerActions.signStep}.
 */
final class Deeds {

    private static final String ORIGIN = "origin";

    private Deeds() {}

    /** The public methods that {@code service} itself declares and that are told who asks. */
    static List<Method> methods(Class<?> service) {
        return Arrays.stream(service.getDeclaredMethods())
                .filter(method -> Modifier.isPublic(method.getModifiers()) && !Modifier.isStatic(method.getModifiers()))
                .filter(method -> !method.isBridge() && !method.isSynthetic())
                .filter(method -> Arrays.stream(method.getGenericParameterTypes()).anyMatch(Deeds::tellsWhoAsks))
                .toList();
    }

    /** The names of everything that {@code method} can be asked for. */
    static List<String> names(Method method) {
        List<String> commands = Arrays.stream(method.getGenericParameterTypes())
                .map(Deeds::element).filter(Deeds::isManyCommands)
                .flatMap(Deeds::leaves).map(Deeds::name).distinct().toList();
        return commands.isEmpty() ? List.of(name(method)) : commands;
    }

    /** The names of what {@code method} is asked for with {@code arguments}. */
    static List<String> names(Method method, Object... arguments) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < arguments.length; i++) {
            if (isManyCommands(element(method.getGenericParameterTypes()[i]))) {
                flat(arguments[i]).forEach(command -> names.add(name(command.getClass())));
            }
        }
        return names.isEmpty() ? List.of(name(method)) : names;
    }

    /** What {@code argument} holds: itself, or its parts where it is several. */
    static Stream<?> flat(Object argument) {
        return argument instanceof Collection<?> several ? several.stream() : Stream.ofNullable(argument);
    }

    /** The origin that a command carries. */
    static Origin origin(Object command) {
        return (Origin) read(command, ORIGIN);
    }

    /** The value of {@code name} in the record {@code command}. */
    static Object read(Object command, String name) {
        try {
            Method accessor = command.getClass().getMethod(name);
            accessor.setAccessible(true);
            return accessor.invoke(command);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(command.getClass() + " has a public " + name, impossible);
        }
    }

    static boolean isCommand(Class<?> type) {
        return type.getSimpleName().length() > 0 && Stream.concat(Stream.of(type), Stream.of(type.getInterfaces()))
                .anyMatch(one -> one.isInterface() && one.isSealed() && one.getSimpleName().endsWith("Command"));
    }

    /** Whether a method that takes {@code type} does as many things as there are commands of it. */
    private static boolean isManyCommands(Class<?> type) {
        return type.isSealed() && isCommand(type);
    }

    static String name(Class<?> command) {
        Class<?> of = command.getEnclosingClass();
        return of == null ? command.getSimpleName() : of.getSimpleName() + "." + command.getSimpleName();
    }

    private static String name(Method method) {
        return method.getDeclaringClass().getSimpleName() + "." + method.getName();
    }

    private static boolean tellsWhoAsks(Type parameter) {
        Class<?> type = element(parameter);
        return type == Origin.class || type == Actor.class || type == Signer.class || isCommand(type);
    }

    private static Stream<Class<?>> leaves(Class<?> command) {
        return command.isSealed()
                ? Arrays.stream(command.getPermittedSubclasses()).flatMap(Deeds::leaves)
                : Stream.of(command);
    }

    /** The class of a parameter, or of what its collection holds. */
    static Class<?> element(Type type) {
        return switch (type) {
            case Class<?> itself -> itself;
            case ParameterizedType several when several.getRawType() instanceof Class<?> raw
                    && Collection.class.isAssignableFrom(raw) -> element(several.getActualTypeArguments()[0]);
            case WildcardType wild -> element(wild.getUpperBounds()[0]);
            default -> Object.class;
        };
    }
}
