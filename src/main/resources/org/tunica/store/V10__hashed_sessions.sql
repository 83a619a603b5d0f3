-- From here on a session stands under the digest of the secret its browser holds, so that whoever reads this table cannot
-- go on in anybody's name. Those from before stood under the secret itself: they end, and people sign in again.
delete from sessions;
