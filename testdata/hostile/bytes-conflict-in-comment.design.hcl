/*
<<<<<<< HEAD
one side
=======
other side
>>>>>>> theirs
*/
