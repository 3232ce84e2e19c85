# nothing here
// nor here
/* nor
   here */
