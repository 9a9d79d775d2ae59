package org.tidegate.rules;

@Doc("Bounds on what looking into one message may cost; they count work, never time.")
public record LimitRules(
        @Doc("Raw bytes looked at.") long messageBytes,
        @Doc("Bytes of one header section.") int headerBytes,
        @Doc("Header fields of one section.") int headerFields,
        @Doc("MIME parts and archive entries in all.") int parts,
        @Doc("Nesting of containers.") int depth,
        @Doc("Decoded bytes of one attachment.") long attachmentBytes,
        @Doc("Decoded bytes of all attachments together.") long totalBytes,
        @Doc("Characters of body text kept.") int textChars,
        @Doc("Pages of a PDF looked at.") int pdfPages,
        @Doc("Embedded images of a PDF looked at.") int pdfImages) {}
