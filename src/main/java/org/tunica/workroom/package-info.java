/**
 * Where changes of rules are worked on at a server: working copies in the folder of the data, edited by form or as text,
 * replayed behind the scenes, and built into a release once they were handed in.
 *
 * <p>In: a store, the release in force, what an author typed. Out: files of a working copy, a kept replay, a release. Entry
 * type: {@link org.tunica.workroom.Workroom}; beside it {@link org.tunica.workroom.ReplayRoom} and {@link
 * org.tunica.workroom.ReleasePress}.
 *
 * <p>Decisions. A working copy is the same folder the command line works in ({@code changes/} and the number, in the folder of
 * the data or, where those are in a database, in the folder the server was given for it, which several servers share), so an
 * author can go on with either; it is a draft and no part of the store or its backups until it is handed
 * in. What is typed is kept even when it is faulty, as an editor would, and its faults are told with file and line: a bar
 * keeps it from being handed in, not from being saved. Whoever saves says what they saw, so nobody writes over what they did
 * not see. Only the author edits. A replay is kept under the digests of both sides, so it is found again whoever asks, and one
 * of other rules can never be taken for it; one runs at a time. Where several servers are over one database there are no
 * working copies, and a change that was handed in is replayed by all of them: each takes parts by a row that says whose a part
 * is and until when ({@link org.tunica.workroom.StoreParts}), and parts of a program that died are free again when their time
 * is over. A release is built from a change that was handed in, and from
 * nothing else.
 *
 * <p>May import the front door, {@code casefile}, {@code knowledge}, {@code rules}, {@code review}, {@code proposal}, {@code
 * replay}, {@code pastcases}, {@code governance}, {@code releases}, {@code store}.
 */
@NullMarked
package org.tunica.workroom;

import org.jspecify.annotations.NullMarked;
