package org.tidegate.casework;

/** A picture as it came, with the media type that its content shows. */
public record PictureBytes(String mediaType, byte[] content) {}
