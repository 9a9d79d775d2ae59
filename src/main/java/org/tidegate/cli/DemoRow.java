package org.tidegate.cli;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * One message of the demo and how its submission stood after it.
 *
 * @param file name in the sample mailbox, from the Message-ID
 * @param verdict to-read, held or aside
 * @param notes codes that stand as notes
 * @param why what does not add up, in plain words
 * @param reply what the suggested letter does; empty where none is due
 * @param byItself what the policy of unattended answers did: asked, acknowledged or left
 */
record DemoRow(
        String file,
        String who,
        Instant arrived,
        String outcome,
        Optional<String> ref,
        String verdict,
        List<String> holds,
        List<String> notes,
        List<String> why,
        Optional<String> reply,
        Optional<String> byItself,
        String photo,
        String sent) {}
