package brightseam.weld;

import brightseam.kernel.JointId;
import brightseam.people.Person;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Everything that an arc is decided on.
 *
 * @param planned how the last issue of the map plans the joint; empty where it does not
 * @param chamber the chamber now; empty where no session holds the kit
 * @param welder who welds
 * @param qualificationNeeded the words that this shop asks a qualification for
 * @param filler what is added now; empty where nothing is
 * @param backSide what is known of the back side
 * @param parts every piece of the joint
 * @param weldingElsewhere another joint that this welder has an arc running on
 * @param repairDecided the disposition that lets a rejected joint be repaired, in words
 */
public record ArcFacts(
        Optional<WeldMap.Planned> planned,
        Optional<ChamberFact> chamber,
        Person welder,
        Set<String> qualificationNeeded,
        Optional<FillerFact> filler,
        BackSideFact backSide,
        List<PartFact> parts,
        Optional<JointId> weldingElsewhere,
        Optional<String> repairDecided) {

    /** Copies the collections. */
    public ArcFacts {
        qualificationNeeded = Set.copyOf(qualificationNeeded);
        parts = List.copyOf(parts);
    }
}
