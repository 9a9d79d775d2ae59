package org.tidegate.sample;

/** The device a message was written on; invented makers and programs. */
record Phone(String mailProgram, String make, String model, boolean writesOffset) {

    static final Phone FULMAR = new Phone("Fulmar Mail 4.2 (F6; phone)", "Fulmar", "F6", true);
    static final Phone EIDER = new Phone("Eider Post 2.0 (Eider 9; phone)", "Eider", "Eider 9", false);
    static final Phone WEBMAIL = new Phone("Marram Webmail 7", "Fulmar", "F6", true);
}
