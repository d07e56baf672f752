package brightseam.app.guard;

import brightseam.people.shell.Standings;
import brightseam.traveller.shell.TravellerActions;
import java.lang.reflect.Method;
import java.util.Arrays;
import org.springframework.aop.framework.autoproxy.AbstractBeanFactoryAwareAdvisingPostProcessor;
import org.springframework.aop.support.DefaultPointcutAdvisor;
import org.springframework.aop.support.StaticMethodMatcherPointcut;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Puts the {@link ServiceGuard} before every service that can be told who asks, so that none can be forgotten. */
@Configuration(proxyBeanMethods = false)
class GuardSetup {

    @Bean
    static Guarding guarding(ObjectProvider<Standings> standings, ObjectProvider<TravellerActions> records) {
        return new Guarding(new ServiceGuard(standings::getObject, records::getObject));
    }

    /** Whether {@code type} is a service of a feature. */
    static boolean isService(Class<?> type) {
        return type.getPackageName().matches("brightseam\\.[a-z]+\\.shell");
    }

    /** Wraps the services as they are made. */
    static final class Guarding extends AbstractBeanFactoryAwareAdvisingPostProcessor {

        private static final long serialVersionUID = 1;

        Guarding(ServiceGuard guard) {
            setProxyTargetClass(true);
            this.advisor = new DefaultPointcutAdvisor(new Told(), guard);
        }
    }

    private static final class Told extends StaticMethodMatcherPointcut {

        Told() {
            setClassFilter(GuardSetup::isService);
        }

        @Override
        public boolean matches(Method method, Class<?> service) {
            return Deeds.methods(service).stream().anyMatch(deed -> deed.getName().equals(method.getName())
                    && Arrays.equals(deed.getParameterTypes(), method.getParameterTypes()));
        }
    }
}
