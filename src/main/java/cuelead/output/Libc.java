package cuelead.output;

import org.lwjgl.system.APIUtil;
import org.lwjgl.system.Library;
import org.lwjgl.system.SharedLibrary;

/** Addresses of functions of Linux's C library. */
final class Libc {
    private static final SharedLibrary LIBRARY = Library.loadNative(Libc.class, "org.lwjgl", "libc.so.6");

    static final long DUP = APIUtil.apiGetFunctionAddress(LIBRARY, "dup");
    static final long DUP2 = APIUtil.apiGetFunctionAddress(LIBRARY, "dup2");
    static final long CLOSE = APIUtil.apiGetFunctionAddress(LIBRARY, "close");
    static final long SETENV = APIUtil.apiGetFunctionAddress(LIBRARY, "setenv");
    static final long SCHED_SETSCHEDULER = APIUtil.apiGetFunctionAddress(LIBRARY, "sched_setscheduler");

    private Libc() {}
}
