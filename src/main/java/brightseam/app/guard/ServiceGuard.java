package brightseam.app.guard;

import brightseam.kernel.BadgeId;
import brightseam.kernel.Decision;
import brightseam.kernel.Origin;
import brightseam.kernel.Refusal;
import brightseam.kernel.TravellerId;
import brightseam.ledger.NotStoredException;
import brightseam.ledger.Outcome;
import brightseam.ledger.Prepared;
import brightseam.people.PermissionRefusal;
import brightseam.people.Role;
import brightseam.people.Signer;
import brightseam.people.Standing;
import brightseam.people.shell.Standings;
import brightseam.traveller.shell.Actor;
import brightseam.traveller.shell.TravellerActions;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.aopalliance.intercept.MethodInterceptor;
import org.aopalliance.intercept.MethodInvocation;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;

/**
 * Stands before every service: asks the register who whoever asks is now, and answers with a refusal where the
 * {@link Permissions} do not name a role of theirs. What a service asks another for on the way is part of the deed that
 * was permitted, so only the outermost call is looked at.
 */
final class ServiceGuard implements MethodInterceptor {

    private static final Logger LOG = LoggerFactory.getLogger(ServiceGuard.class);
    /** What the one who signs is called in every command that is signed. */
    private static final String SIGNER = "signer";
    private static final ThreadLocal<Boolean> INSIDE = new ThreadLocal<>();

    private final Supplier<Standings> standings;
    private final Supplier<TravellerActions> records;

    /** The services are asked for when they are needed: this stands before them, so it is made first. */
    ServiceGuard(Supplier<Standings> standings, Supplier<TravellerActions> records) {
        this.standings = standings;
        this.records = records;
    }

    @Override
    public Object invoke(MethodInvocation call) throws Throwable {
        if (INSIDE.get() != null) {
            return call.proceed();
        }
        List<PermissionRefusal> refusals = refusals(call.getMethod(), call.getArguments());
        INSIDE.set(true);
        try {
            if (!refusals.isEmpty()) {
                noteDown(call, refusals);
                return answer(call.getMethod(), refusals);
            }
            return call.proceed();
        } finally {
            INSIDE.remove();
        }
    }

    /** Tries of people whom the shop knows stand in the records of the travellers that they were made on. */
    private void noteDown(MethodInvocation call, List<PermissionRefusal> refusals) {
        Optional<Actor> actor = Arrays.stream(call.getArguments())
                .filter(Actor.class::isInstance).map(Actor.class::cast).findFirst();
        List<TravellerId> ids = Arrays.stream(call.getArguments())
                .flatMap(argument -> Deeds.flat(argument instanceof Map<?, ?> several ? several.keySet() : argument))
                .filter(TravellerId.class::isInstance).map(TravellerId.class::cast).toList();
        boolean known = refusals.stream().noneMatch(PermissionRefusal.AskerUnknown.class::isInstance);
        if (known && !ids.isEmpty() && call.getMethod().getReturnType() != void.class) {
            String attempt = call.getMethod().getName().replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
            actor.ifPresent(who -> records.get().noteRefusal(who, ids, attempt, List.copyOf(refusals)));
        }
    }

    private List<PermissionRefusal> refusals(Method method, Object[] arguments) {
        List<PermissionRefusal> refusals = new ArrayList<>();
        for (String deed : Deeds.names(method, arguments)) {
            Permit permit = Permissions.of(deed);
            if (permit.reach() != Permit.Reach.READS) {
                for (Object argument : arguments) {
                    Deeds.flat(argument).forEach(one -> objection(one, permit).ifPresent(refusals::add));
                }
            }
            if (!refusals.isEmpty()) {
                LOG.warn("not permitted: {}: {}", deed, refusals);
                return refusals.stream().distinct().toList();
            }
        }
        return refusals;
    }

    private Optional<PermissionRefusal> objection(Object asker, Permit permit) {
        return switch (asker) {
            case Origin origin -> objection(origin.by(), permit.doers());
            case Actor actor -> objection(actor.badge(), permit.doers());
            case Signer signer -> Standing.objection(signer, standing(signer.badge()), permit.signers());
            case Object command when Deeds.isCommand(command.getClass()) ->
                objection(Deeds.origin(command).by(), permit.doers()).or(() -> signer(command).flatMap(signer ->
                        Standing.objection(signer, standing(signer.badge()), permit.signers())));
            default -> Optional.empty();
        };
    }

    /** What the server notices by itself is asked for by nobody. */
    private Optional<PermissionRefusal> objection(BadgeId by, Set<Role> doers) {
        return by.equals(Origin.SHOP) ? Optional.empty() : Standing.objection(by, standing(by), doers);
    }

    private static Optional<Signer> signer(Object command) {
        return Arrays.stream(command.getClass().getRecordComponents())
                .filter(part -> part.getType() == Signer.class && part.getName().equals(SIGNER))
                .map(part -> (Signer) Deeds.read(command, part.getName()))
                .findFirst();
    }

    private Optional<Standing> standing(BadgeId badge) {
        try {
            return standings.get().of(badge);
        } catch (DataAccessException failure) {
            LOG.error("the database does not answer", failure);
            throw new NotStoredException("the database does not answer");
        }
    }

    private static Object answer(Method method, List<? extends Refusal> refusals) {
        Class<?> type = method.getReturnType();
        List<Refusal> all = List.copyOf(refusals);
        if (type == Outcome.class) {
            return new Outcome.Refused<>(all);
        }
        if (type == Prepared.class) {
            return new Prepared.Refused<>(all);
        }
        if (type == Decision.class) {
            return Decision.refused(all);
        }
        if (type == void.class) {
            return null;
        }
        throw new IllegalStateException("not permitted: " + method + " " + all);
    }
}
