package org.tidegate.casework;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.tidegate.rules.Rules;
import org.tidegate.store.StoreLocation;
import org.tidegate.vault.DiskLayer;
import org.tidegate.vault.FileLayer;

/**
 * Everything the desk is built from.
 *
 * @param dataFolder where the master key lies, and the blobs where the store is embedded
 * @param decoders names of outside picture decoders that are installed
 * @param inspection how one message is looked into
 * @param milestones told at each commit boundary
 */
public record DeskConfig(
        Path dataFolder,
        StoreLocation location,
        Rules rules,
        Clock clock,
        FileLayer files,
        List<String> decoders,
        Inspection inspection,
        Milestones milestones) {

    public DeskConfig {
        decoders = List.copyOf(decoders);
    }

    /** Everything in one folder: keys, blobs and the SQLite file. */
    public static DeskConfig embedded(Path dataFolder, Rules rules, Clock clock) {
        return of(dataFolder, new StoreLocation.Embedded(dataFolder.resolve("tidegate.db")), rules, clock);
    }

    public static DeskConfig of(Path dataFolder, StoreLocation location, Rules rules, Clock clock) {
        return new DeskConfig(
                dataFolder, location, rules, clock, new DiskLayer(), List.of(), Inspection.by(rules), Milestones.NONE);
    }

    public DeskConfig withFiles(FileLayer layer) {
        return new DeskConfig(dataFolder, location, rules, clock, layer, decoders, inspection, milestones);
    }

    public DeskConfig withDecoders(List<String> names) {
        return new DeskConfig(dataFolder, location, rules, clock, files, names, inspection, milestones);
    }

    public DeskConfig withInspection(Inspection other) {
        return new DeskConfig(dataFolder, location, rules, clock, files, decoders, other, milestones);
    }

    public DeskConfig withMilestones(Milestones told) {
        return new DeskConfig(dataFolder, location, rules, clock, files, decoders, inspection, told);
    }
}
