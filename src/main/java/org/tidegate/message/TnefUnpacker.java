package org.tidegate.message;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Optional;
import org.apache.poi.hmef.HMEFMessage;

/** Files inside a {@code winmail.dat} (TNEF, MS-OXTNEF). */
final class TnefUnpacker implements Unpacker {

    @Override
    public boolean opens(String type) {
        return type.equals("application/vnd.ms-tnef");
    }

    @Override
    public void unpack(Attachment container, AttachmentCollector into) throws IOException {
        HMEFMessage message = new HMEFMessage(new ByteArrayInputStream(container.content()));
        int number = 0;
        for (org.apache.poi.hmef.Attachment file : message.getAttachments()) {
            Optional<String> name =
                    Optional.ofNullable(file.getLongFilename()).or(() -> Optional.ofNullable(file.getFilename()));
            into.addStream(
                    container.path() + "/" + name.orElse("file-" + number++),
                    name,
                    Attachment.Container.TNEF,
                    new ByteArrayInputStream(file.getContents()));
        }
    }
}
