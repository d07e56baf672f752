package brightseam.check.shell;

import brightseam.ledger.shell.Projection;
import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.springframework.beans.factory.config.BeanDefinition;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ClassPathScanningCandidateComponentProvider;
import org.springframework.core.annotation.AnnotatedElementUtils;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.util.ClassUtils;

/**
 * Every projection of the program on a database of one's own, without the server: what the server has as a bean, made
 * with nothing but {@link JdbcClient}.
 */
public final class FreshProjections {

    private static final String PROGRAM = "brightseam";

    private FreshProjections() {}

    /** The migrations of the embedded database, for {@code source}. */
    public static Flyway migrations(DataSource source) {
        return Flyway.configure().dataSource(source)
                .locations("classpath:db/migration/common", "classpath:db/migration/h2").load();
    }

    /**
     * All of them.
     *
     * @throws IllegalStateException where one asks for more than {@link JdbcClient}
     */
    public static List<Projection> make(JdbcClient jdbc) {
        List<Projection> made = new ArrayList<>();
        for (BeanDefinition found : new ClassPathScanningCandidateComponentProvider(true)
                .findCandidateComponents(PROGRAM)) {
            Class<?> type = ClassUtils.resolveClassName(
                    String.valueOf(found.getBeanClassName()), FreshProjections.class.getClassLoader());
            if (Projection.class.isAssignableFrom(type) && isBean(type, Component.class)) {
                made.add(make(type, jdbc));
            }
            Stream.of(type.getDeclaredMethods())
                    .filter(method -> Projection.class.isAssignableFrom(method.getReturnType()))
                    .filter(method -> isBean(method, Bean.class))
                    .forEach(method -> made.add(make(method, jdbc)));
        }
        return made;
    }

    private static boolean isBean(AnnotatedElement element, Class<? extends java.lang.annotation.Annotation> mark) {
        return AnnotatedElementUtils.hasAnnotation(element, mark);
    }

    private static Projection make(Class<?> type, JdbcClient jdbc) {
        try {
            Constructor<?> constructor = type.getDeclaredConstructor(JdbcClient.class);
            constructor.setAccessible(true);
            return (Projection) constructor.newInstance(jdbc);
        } catch (ReflectiveOperationException failure) {
            throw new IllegalStateException("a projection that asks for more than JdbcClient: " + type, failure);
        }
    }

    private static Projection make(Method method, JdbcClient jdbc) {
        try {
            if (!Modifier.isStatic(method.getModifiers()) || method.getParameterCount() != 1) {
                throw new IllegalStateException("a projection that asks for more than JdbcClient: " + method);
            }
            method.setAccessible(true);
            return (Projection) method.invoke(null, jdbc);
        } catch (ReflectiveOperationException failure) {
            throw new IllegalStateException("a projection that cannot be made: " + method, failure);
        }
    }
}
