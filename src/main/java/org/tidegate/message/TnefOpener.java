package org.tidegate.message;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Optional;
import org.apache.poi.hmef.HMEFMessage;
import org.tidegate.message.Attachment.Container;

/** Files inside a {@code winmail.dat} (TNEF). */
final class TnefOpener {

    private TnefOpener() {}

    static void open(FileOpener files, String path, byte[] content, int depth) throws IOException {
        HMEFMessage message = new HMEFMessage(new ByteArrayInputStream(content));
        for (org.apache.poi.hmef.Attachment a : message.getAttachments()) {
            Optional<String> name =
                    Optional.ofNullable(a.getLongFilename()).or(() -> Optional.ofNullable(a.getFilename()));
            files.open(path + "/" + name.orElse("file"), name, "", Container.TNEF, false, a.getContents(), depth + 1);
        }
    }
}
