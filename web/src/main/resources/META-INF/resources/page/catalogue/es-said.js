// @ts-check
/** Spanish words for what the service says, by code. `{actual}` and `{limit}` stand for the two values of a finding. */

/** @type {import('../words.js').Said} */
export default {
    findings: {
        'above-60-v': {
            message: 'La batería llena tiene {actual}, por encima de {limit} en corriente continua: tocar los dos polos puede matar.',
            action: 'Tapas que solo se abran con herramienta, cable naranja, señales de advertencia, ningún borne desnudo; que lo monte o lo revise alguien formado para estas tensiones.',
        },
        'above-cable-60-v': {
            message: 'A plena carga la batería tiene {actual}, por encima de {limit}, hasta donde llega la norma del cable de batería.',
            action: 'Elegir fusibles, cable, contactor e interruptor por la tensión a plena carga.',
        },
        'above-controller-battery-limit': {
            message: 'Dimensionado para {actual}, más que los {limit} que el controlador toma de la batería; aquí no corresponde una corriente del lado del motor.',
        },
        'above-fuse-58-v': {
            message: 'A plena carga la batería tiene {actual}, por encima de {limit}, la clase de los fusibles de vehículo de carretera de 58 V.',
            action: 'Elegir fusibles, cable, contactor e interruptor por la tensión a plena carga.',
        },
        'above-its-cable': {
            message: 'Tiene {actual} veces la resistencia de la misma longitud de su cable; un engaste sano no tiene más que el cable.',
            action: 'Aislar la batería, abrir la unión, limpiar hasta el metal brillante, sustituir un terminal quemado o corroído por uno estañado y engastado, apretar al par del fabricante y volver a medir.',
        },
        'above-motor-maximum': {
            message: 'El motor llega a {actual}; su rotor no debe pasar de {limit}.',
            action: 'Poner el tope de velocidad del controlador por debajo del límite del rotor.',
        },
        'above-rest': {
            message: '{actual} por celda es más de lo que tiene una celda reposada, {limit}: acaba de estar en el cargador, o hay menos celdas de las indicadas.',
            action: 'Contar las celdas y volver a medir tras una noche fuera del cargador.',
        },
        'above-rule-50-v': {
            message: 'A plena carga la batería tiene {actual}, por encima de {limit}: la regla de fusibles de 50 V ya no vale.',
            action: 'Elegir fusibles, cable, contactor e interruptor por la tensión a plena carga.',
        },
        'above-touch-30-v': {
            message: 'A plena carga la batería tiene {actual}, por encima de {limit}: fuera de locales secos hace falta protección básica.',
            action: 'Elegir fusibles, cable, contactor e interruptor por la tensión a plena carga.',
        },
        'adhesion-exceeded': {
            message: 'Mantener la velocidad solo con el freno indicado (el motor o los frenos) exige una adherencia de {actual} y el suelo tiene {limit}: las ruedas deslizan y el vehículo se embala.',
            action: 'No entrar en esta pendiente con este suelo, o frenar todas las ruedas.',
        },
        'ampacity-of-thinner-gauge': {
            message: 'La tabla solo tiene calibres AWG; para {actual} se toma la corriente del mayor calibre que no es más grueso.',
        },
        'arms-as-measured': {
            message: 'La caída, la vía y la convergencia se calculan con los brazos como se midieron, descolgados {actual}; otros brazos tienen su propia geometría.',
            action: 'Medir las articulaciones con los brazos nuevos montados y no indicar la elevación que dan.',
        },
        'axle-not-raised': {
            message: 'El kit eleva el bastidor {actual} y deja el eje donde está; solo un neumático más alto da más despeje al eje o al diferencial.',
        },
        'axles-not-in-line': {
            message: 'El eje trasero está {actual} a un lado del delantero: las ruedas traseras siguen su propia rodada y el vehículo vuelca antes hacia un lado.',
            action: 'Medir la convergencia, y si el eje está a escuadra, antes de aumentar la velocidad.',
        },
        'battery-cable-not-motor-cable': {
            message: 'La pinza va en el cable de la batería: con el acelerador a medias, un cable del motor lleva más corriente.',
        },
        'battery-current-in-motor-leads': {
            message: 'Dimensionado para {actual}, no más de lo que el controlador toma de la batería ({limit}); con el acelerador a medias el motor lleva más corriente.',
            action: 'Indicar la corriente del lado del motor, o la corriente del motor del controlador.',
        },
        'battery-current-over-limit': {
            message: 'El controlador puede tomar {actual} y la batería da {limit} como mucho: la gestión de la batería abre y el vehículo se para con carga restante.',
            action: 'Dimensionar la batería por la corriente y no solo por la capacidad, o bajar el límite del lado de la batería.',
        },
        'battery-management-unknown': {
            message: 'No se ha indicado ningún límite de una gestión de la batería: el litio sin ella no tiene nada que impida la sobrecarga o la descarga profunda de una sola celda.',
            action: 'Indicar los límites de su hoja de datos; una batería sin gestión no debe ir en un vehículo.',
        },
        'below-charger-start': {
            message: 'La batería da {actual} y el cargador arranca desde {limit}: no hará nada.',
            action: 'Comprobar primero la polaridad. Después, un cargador pequeño de la tensión de cada bloque, de 10 a 20 minutos en cada uno, hasta que la serie pase de esta tensión; luego, el cargador principal.',
        },
        'below-cut-off-under-load': {
            message: 'Bajo carga una celda tiene {actual}, por debajo de la reserva de {limit}: pare y cargue.',
            action: 'Cargar enseguida; si hace lo mismo con la batería llena, medir cada bloque bajo carga.',
        },
        'below-freezing': {
            message: 'A {actual} el ácido de una celda descargada puede congelarse y reventar la caja.',
            action: 'Gastar menos carga y recargar enseguida.',
        },
        'below-proposed-threshold': {
            message: 'En su peor ocupación, el factor de estabilidad estática hacia el lado más débil es {actual}; una vez se propuso que un vehículo side-by-side aguante al menos {limit} g de aceleración lateral antes de volcar, y un vehículo aguanta menos de lo que dice su factor estático.',
            action: 'Bajar lo que va alto, ensanchar la vía dentro de lo que admiten bujes y rodamientos, o limitar la velocidad.',
        },
        'below-rated-current': {
            message: 'Cada rama da {actual} de media, menos que los {limit} para los que está impresa su capacidad: se toma la capacidad impresa, puede haber más.',
        },
        'belt-above-speed': {
            message: 'A {actual} no todos llevan el cinturón; la norma propuesta no habría dejado a un vehículo side-by-side pasar de {limit} hasta que se abrocharan los cinturones.',
            action: 'Limitar la velocidad, o montar cinturones junto con una estructura antivuelco.',
        },
        'belt-needs-roll-structure': {
            message: 'Un cinturón de regazo va con una estructura antivuelco: sin ella sujeta a las personas debajo de un vehículo que vuelca.',
            action: 'Montar juntos los cinturones y una estructura antivuelco ensayada; el cálculo no puede juzgar una jaula.',
        },
        'between-printed-limits': {
            message: '{actual} queda en las dos cifras impresas de un mismo límite o entre ellas: según una lo pasa, según la otra no.',
            action: 'Ajustar la velocidad por debajo de la cifra menor y comprobarla por satélite.',
        },
        'beyond-capacity-rows': {
            message: 'Cada rama da {actual} de media y la fila más rápida es de {limit}: la capacidad se prolonga con las dos últimas filas, y resulta demasiado alta si el exponente crece.',
            action: 'Añadir una fila del fabricante, o una descarga cronometrada propia, con la corriente del vehículo.',
        },
        'beyond-linkage': {
            message: 'La elevación pide que las ruedas delanteras se muevan {actual} respecto al bastidor; estos brazos no pasan de {limit}.',
            action: 'Comprobar las articulaciones medidas; elevar menos, o con brazos más largos u otras manguetas.',
        },
        'block-may-be-reversed': {
            message: '{actual} es lo que queda cuando un bloque está conectado al revés: cuenta en contra de los demás.',
            action: 'Medir cada bloque por separado, también la polaridad, antes de la próxima carga.',
        },
        'block-reversed': {
            message: 'El bloque da {actual}: está conectado al revés, o se ha descargado hasta invertirse. Cargarlo así lo destruye y puede reventarlo.',
            action: 'No cargar. Comprobar la polaridad de cables y bornes; un bloque que se ha invertido ya no sirve.',
        },
        'blocks-apart': {
            message: 'Las tensiones de los bloques difieren en {actual}, más de {limit}, y ninguno destaca por sí solo: el juego está desigual.',
            action: 'Cargar el juego del todo, igualar las celdas de plomo abierto según las instrucciones del fabricante y volver a medir.',
        },
        'body-lift': {
            message: 'Elevar la carrocería {actual} deja como están el bastidor, los ángulos de despeje y la suspensión, pero sube el centro de gravedad.',
            action: 'Comprobar el árbol de dirección, los pedales, los tubos de freno y los soportes de la carrocería; los tornillos trabajan más a flexión en soportes más altos.',
        },
        'bottoms-out': {
            message: 'El eje se apoya en sus topes: a los muelles les faltan {actual} de recorrido, así que la altura calculada es menor que la que tendrá, y cada bache va al bastidor.',
            action: 'Quitar carga, o montar muelles con la rigidez para dejarlo igual.',
        },
        'brake-balance-not-known': {
            message: 'No se sabe cómo se reparten los frenos entre los ejes: se reparten como las cargas, que es lo mejor que puede hacer un freno.',
            action: 'Indicar el par de los dos ejes.',
        },
        'brakes-hot': {
            message: 'Los tambores o discos se calientan {actual}, en una sola frenada o en la bajada solo con los frenos de fricción y sin ceder calor; por encima de {limit} los forros pierden eficacia.',
            action: 'Comprobar la masa de tambores o discos y que sea la de las dos ruedas; montarlos más pesados o ir más despacio. En la bajada, también parar a enfriar o llevar menos carga.',
        },
        'brakes-not-known': {
            message: 'Nada dice cuánta fuerza tienen los frenos: esto es lo mejor que permiten los neumáticos.',
            action: 'Medir una frenada: la velocidad, y la distancia desde donde empiezan a actuar los frenos.',
        },
        'brakes-on-one-axle': {
            message: 'Solo frenan las ruedas de un eje en una bajada de {actual}. Si son las traseras, la pendiente les quita carga y, bloqueadas, hacen que el vehículo se atraviese y vuelque; si son las delanteras, las traseras no ayudan y, bloqueadas, las delanteras no dirigen.',
            action: 'Frenos en las cuatro ruedas; hasta entonces, cuesta abajo al paso de una persona y sin frenar en las curvas.',
        },
        'brakes-taken-at-grip': {
            message: 'Se supone que los frenos del vehículo bastan para usar todo el agarre de sus neumáticos; otros más débiles lo detienen más tarde.',
            action: 'Probar una frenada en llano con el conjunto completo.',
        },
        'breaker-before-fuse': {
            message: 'Hasta {actual} el otro elemento de corte abre antes de que se funda el fusible, y debe cortar lo que pasa de sus {limit}.',
            action: 'Usar un fusible más rápido, o asegurarse de que el otro elemento puede cortar esa corriente.',
        },
        'breaker-too-large-for-outlet': {
            message: 'Un magnetotérmico de {actual} no protege la base de enchufe, que admite {limit} como mucho.',
            action: 'Hacer revisar este circuito a un electricista autorizado antes de cargar en él.',
        },
        'cable-burns': {
            message: 'Este cable pasaría de {limit}, donde termina el modelo físico y ya no queda aislamiento.',
            action: 'Usar un cable más grueso.',
        },
        'cable-burns-before-fuse': {
            message: 'Con la corriente de falta mínima el fusible tarda {actual}; el cable la aguanta {limit} sin ceder calor.',
            action: 'Usar un fusible más rápido o de menor calibre, o un cable más grueso.',
        },
        'calibrated-by-measured-speed': {
            message: 'Los {actual} medidos, en lugar de los {limit} calculados, calibran la velocidad del motor, o bien la rodadura y el arrastre.',
        },
        'camber-change': {
            message: 'La caída de cada rueda delantera cambia en {actual}; {limit} ya desgasta los neumáticos.',
            action: 'Volver a ajustar la caída, o elevar con manguetas o con brazos superiores más largos.',
        },
        'cannot-reach': {
            message: 'Este conductor no llega a los pedales con la pierna estirada y la guía del todo adelante; el asiento está {actual} demasiado lejos para una rodilla cómoda.',
            action: 'Acercar el asiento o los pedales esa distancia, o bajar un asiento demasiado alto: un freno que no se puede pisar no es un freno.',
        },
        'cap-above-motor-maximum': {
            message: 'El tope de {actual} está por encima de lo que soporta el rotor, {limit}.',
            action: 'Bajar el tope.',
        },
        'cap-above-speed-limit': {
            message: 'El tope del controlador le deja ir a {actual}, por encima de los {limit} deseados.',
            action: 'Ajustar el tope del motor que da la respuesta.',
        },
        'capacitance-unknown': {
            message: 'Sin la capacitancia no se pueden dar ni el tiempo ni la energía; la primera corriente y la potencia con carga conectada valen de todos modos.',
            action: 'Leerla en la hoja de datos del controlador, o indicar lo medido: resistencia del recorrido, tiempo y parte de la tensión alcanzada en ese momento en un osciloscopio.',
        },
        'capacitor-margin-too-small': {
            message: 'Los condensadores son de {limit}; con los picos del frenado necesitan {actual}, 1,2 veces la tensión de la batería llena. Una celda más puede destruir el controlador.',
            action: 'Menos celdas en serie, o un controlador cuyos componentes admitan esa tensión.',
        },
        'carry-rating-is-no-make-rating': {
            message: '{actual} es lo que el elemento de corte conduce ya cerrado; no dice nada de lo que puede cerrar sobre un condensador vacío ni cortar en una falta.',
            action: 'Leer los poderes de cierre y de corte en corriente continua y con la batería llena, e indicar la corriente de corte.',
        },
        'cells-of-another-chemistry': {
            message: '{actual} celdas en serie son habituales en otra química, no en la indicada: con los límites de la química equivocada la batería se sobrecarga o se queda casi vacía.',
            action: 'Leer la química en las celdas y contar las celdas, no fiarse de la etiqueta de la batería.',
        },
        'certify-before-sale': {
            message: 'Si se modifica antes de la primera venta, hay que certificarlo en la clase a la que pasa.',
        },
        'charge-limit-not-known': {
            message: 'Mantener la velocidad carga con {actual}; no se sabe cuánto deja entrar la gestión de la batería, a menudo entre la mitad y un quinto de lo que deja salir.',
        },
        'charge-rate-above-usual': {
            message: '{actual} es más de lo habitual, {limit}: la fase a tensión constante empieza antes de lo calculado y el tiempo es algo mayor.',
        },
        'charge-rate-low': {
            message: '{actual} es poco para esta capacidad de plomo: por debajo de {limit} la carga tarda mucho y el ácido apenas se mezcla.',
        },
        'charge-rate-too-high': {
            message: '{actual} es más que los {limit} que admite una batería de esta química y capacidad: se calienta, y la fase a tensión constante empieza antes de lo calculado.',
            action: 'Seguir el límite del fabricante de la batería: indicarlo en los límites de la batería, o usar un cargador menor.',
        },
        'charge-too-cold': {
            message: 'Estas celdas no admiten carga por debajo de {limit}, y están a {actual}: el metal se deposita dentro, la pérdida queda y la celda puede entrar en cortocircuito.',
            action: 'Calentar las celdas a 5 °C (41 °F) o más, y cargar después.',
        },
        'charge-too-hot': {
            message: 'Estas celdas no admiten carga por encima de {limit}, y están a {actual}.',
            action: 'Dejar que las celdas se enfríen antes.',
        },
        'charger-above-cord': {
            message: 'El cargador toma hasta {actual}; el alargador lleva {limit} y ningún magnetotérmico lo protege: puede arder.',
            action: 'Usar un alargador más grueso o ninguno.',
        },
        'charger-above-outlet': {
            message: 'El cargador toma hasta {actual}; la base de enchufe y el circuito llevan {limit} durante horas. El tiempo indicado solo vale si el cargador se baja a ese valor: si no, salta el magnetotérmico o se sobrecalienta la base.',
            action: 'Bajar la corriente de red del cargador, o usar una base en un circuito propio de más capacidad.',
        },
        'charger-end-voltage-too-high': {
            message: 'El cargador llega a {actual} por celda y esta química admite {limit}. Sobrecargada, una batería de plomo gasea y se seca; una de litio puede arder, y ante eso solo está la gestión de la batería.',
            action: 'No conectarlo. Un cargador, o un ajuste, para esta química y este número de celdas.',
        },
        'charger-end-voltage-too-low': {
            message: 'El cargador termina a {actual} por celda y esta química necesita {limit} para llenarse.',
            action: 'Si termina por debajo de la tensión nominal, este cargador es para menos celdas en serie. Si no, la batería no se llena: menos autonomía, y el plomo se sulfata; ajustar el cargador a esta batería.',
        },
        'charger-may-not-start': {
            message: 'Los cargadores automáticos antiguos no arrancan con la batería en reposo por debajo de {limit}; una batería vacía puede quedar por debajo.',
            action: 'Subir cada bloque con un cargador pequeño de su propia tensión hasta que la serie pase de este valor.',
        },
        'charger-over-charge-limit': {
            message: 'El cargador da {actual} y la batería admite {limit}: la gestión de la batería abre, o sufren las celdas.',
            action: 'Bajar el ajuste del cargador, o usar uno menor.',
        },
        'charger-trips-battery-management': {
            message: 'El cargador llega a {actual} por celda y la gestión de la batería termina la carga a {limit}: abre al final de cada carga.',
            action: 'Un cargador, o un ajuste, para este número de celdas.',
        },
        'charger-will-not-start': {
            message: 'El cargador arranca desde {limit}; con la batería en {actual}, o menos por estar parada, no hace nada. Si esa es su tensión llena, no arranca nunca.',
            action: 'Subir cada bloque con un cargador pequeño de su propia tensión hasta que la serie pase de este valor, y usar luego el cargador principal.',
        },
        'child-needs-belt': {
            message: 'Este ocupante pesa {actual}: en una curva moderada un niño se escurre por debajo o por encima de una sujeción de cadera.',
            action: 'Un cinturón adecuado para un niño, un adulto a su lado, y al paso de una persona en las curvas.',
        },
        'circuit-taken': {
            message: 'Otras cargas del circuito toman {actual} y no dejan nada para un cargador.',
            action: 'Desconectar las otras cargas o usar un circuito propio.',
        },
        'class-left-by-mass': {
            message: 'Solo su masa, {actual}, lo deja fuera de la clase, que pide {limit}.',
        },
        'class-left-by-seats': {
            message: 'Solo sus plazas, {actual}, lo dejan fuera de la clase, que pide {limit}.',
        },
        'class-left-by-speed': {
            message: 'Con {actual} el vehículo queda por su velocidad fuera de una clase: el límite está en {limit}.',
            action: 'Quedarse por debajo del límite, o montar y certificar lo que pide la nueva clase; véase lo que trae consigo.',
        },
        'clearing-beyond-law': {
            message: 'El cable aguanta el cortocircuito más de {limit}, donde termina la ley de las faltas.',
        },
        'climb-over-continuous-discharge': {
            message: 'Esto toma {actual} de la batería, por encima de sus {limit} continuos: no puede durar más que el tiempo de pico.',
            action: 'Subir más despacio, llevar menos carga, o montar una batería para esta corriente.',
        },
        'climb-over-peak-discharge': {
            message: 'Esto toma {actual} de la batería, por encima de su pico de {limit}: aquí se para con carga restante.',
            action: 'Subir más despacio, llevar menos carga, o montar una batería para esta corriente.',
        },
        'close-to-speed-limit': {
            message: 'Quedan {actual} hasta el siguiente límite. Un limitador que reduce en rampa pasa de su ajuste hasta {limit}, y un indicador se equivoca.',
            action: 'Medir la velocidad máxima en llano por satélite, en los dos sentidos, con la batería llena.',
        },
        'coil-may-not-close': {
            message: 'La bobina recibe {actual} como mínimo y cierra desde {limit}: los contactos que vibran o abren en carga se queman y se sueldan.',
            action: 'Alimentar la bobina desde un convertidor, o cortar la batería a una tensión más alta.',
        },
        'coil-not-suppressed': {
            message: 'Sin supresión, la bobina genera un pico de tensión al desconectarla, en general de cientos de voltios; los relés de 12 V llegan a entre 1000 y 1500 V.',
            action: 'Montar el supresor que indica el fabricante del contactor, por ejemplo un diodo con un diodo Zener.',
        },
        'coil-overheats': {
            message: 'La bobina recibe {actual} y soporta {limit} durante horas: el calor crece con el cuadrado, la bobina se quema y los contactos se abren.',
            action: 'Una bobina para esta tensión, un economizador de bobina, o alimentarla desde el convertidor.',
        },
        'coil-slow-release': {
            message: 'Un simple diodo mantiene la corriente de la bobina: el contactor abre despacio y sus contactos pueden soldarse.',
            action: 'Usar un diodo con un diodo Zener o un supresor bidireccional.',
        },
        'cold-pack': {
            message: 'A {actual} una batería de litio no admite carga, y la regeneración es carga: debe estar desactivada, o se deposita metal en las celdas y ahí se queda; cuesta abajo los frenos de fricción están solos.',
            action: 'Calentar la batería a 5 °C, o bajar con los frenos de fricción, despacio.',
        },
        'colder-than-air': {
            message: '{actual} por debajo del aire de alrededor; se midió mal la unión o el aire.',
        },
        'column-below-rating': {
            message: 'La tabla no tiene columna para el límite de {actual}; se usa la de {limit}.',
        },
        'connections-take-voltage': {
            message: 'Los cables y las uniones se llevan {actual} con esta corriente, más de {limit}: una unión está floja, corroída o es demasiado delgada, y se calienta.',
            action: 'Medir los milivoltios en cada unión con la misma corriente; limpiar y apretar la peor.',
        },
        'contactor-above-continuous': {
            message: 'El controlador puede tomar {actual} y los contactos llevan {limit} durante horas: más, solo el tiempo que permite la curva del fabricante.',
            action: 'Comparar con la curva de conducción del fabricante; la corriente que conduce no es la que puede abrir en carga.',
        },
        'contactor-voltage-too-low': {
            message: 'La batería llena tiene {actual} y los contactos son para {limit} en corriente continua: el arco puede no apagarse cuando abren.',
            action: 'Un contactor para corriente continua a la tensión de la batería llena.',
        },
        'controller-holds-back': {
            message: 'El motor necesita {actual} y el controlador da {limit} en el lado del motor.',
        },
        'controller-is-not-the-limit': {
            message: 'En llano, lo que limita la velocidad máxima de {actual} no son los amperios: un controlador mayor no lo hace más rápido, solo más fuerte en las cuestas.',
            action: 'La velocidad viene de la tensión, el motor, la relación y el neumático.',
        },
        'controller-needs-more-voltage': {
            message: 'A media carga la batería tiene {actual} y el controlador trabaja a partir de {limit}: se para con carga todavía.',
            action: 'Más celdas en serie, o un controlador para esta tensión.',
        },
        'controller-stops-before-empty': {
            message: 'Vacía, la batería tiene {actual} y el controlador trabaja a partir de {limit}: se para antes de que la batería esté vacía.',
            action: 'Contar con menos que toda la capacidad.',
        },
        'controller-voltage-margin': {
            message: 'Los picos de la regeneración necesitan {actual}, 1,2 veces la batería llena, y el controlador soporta {limit}: una celda de más lo destruye, y con él el freno.',
            action: 'Menos celdas, o un controlador cuyos condensadores soporten 1,2 veces la tensión llena.',
        },
        'controller-voltage-too-low': {
            message: 'La batería llena tiene {actual} y el controlador soporta {limit}: se avería, y puede averiarse con el motor en marcha.',
            action: 'Menos celdas en serie, o un controlador para la tensión de la batería llena; la tensión nominal no cuenta.',
        },
        'converter-needs-more-voltage': {
            message: 'A media carga la batería tiene {actual} y el convertidor trabaja a partir de {limit}: se para con carga todavía.',
            action: 'Más celdas en serie, o un convertidor para esta tensión.',
        },
        'converter-overloaded': {
            message: 'Todo encendido a la vez toma {actual}; el convertidor da {limit}.',
            action: 'Un convertidor para la suma de todo lo que puede estar encendido a la vez.',
        },
        'converter-stops-before-empty': {
            message: 'Vacía, la batería tiene {actual} y el convertidor trabaja a partir de {limit}: se para antes de que la batería esté vacía.',
            action: 'Contar con menos que toda la capacidad.',
        },
        'converter-voltage-too-low': {
            message: 'La batería llena tiene {actual} y el convertidor soporta {limit}: se avería, y puede poner la tensión de la batería en el lado de 12 V.',
            action: 'Un convertidor para la tensión de la batería llena, con aislamiento entre entrada y salida.',
        },
        'cord-voltage-drop': {
            message: 'El alargador pierde una parte de {actual} de la tensión de red, más de {limit}: se calienta, y el cargador puede cortarse.',
            action: 'Usar un alargador más corto o más grueso, o ninguno.',
        },
        'cord-wound': {
            message: 'Un alargador que se queda enrollado no puede enfriarse: se calcula con {limit} durante horas.',
            action: 'Desenrollar el alargador del todo y dejarlo extendido.',
        },
        'current-beyond-pack': {
            message: 'Se piden {actual}; con esta resistencia interna un cortocircuito daría {limit}, así que no se responde lo que depende de esa corriente.',
            action: 'Comprobar la unidad de la resistencia y a qué corresponde.',
        },
        'cut-off-under-load': {
            message: 'Con la batería medio llena, la mayor carga sostenida baja su tensión a {actual}, por debajo de su tensión de corte de {limit}: ahí se para con carga restante.',
            action: 'Menos resistencia (más ramas en paralelo, celdas mayores, uniones limpias) o menos potencia en ese tramo.',
        },
        'cuts-out-on-hills': {
            message: 'Pierde {actual} con la corriente máxima; una tracción que se corta en las cuestas y vuelve es la primera señal de una unión así, no de una batería mala.',
            action: 'Aislar la batería, abrir la unión, limpiar hasta el metal brillante, sustituir un terminal quemado o corroído por uno estañado y engastado, apretar al par del fabricante y volver a medir.',
        },
        'cuts-out-under-load': {
            message: 'Con la batería medio llena y el controlador en su límite, la tensión cae a {actual}, por debajo de los {limit} a los que cortan el controlador, la gestión de la batería o las celdas: se corta con carga restante; si tampoco llena se mantiene por encima, en cada cuesta.',
            action: 'Menos resistencia (más ramas en paralelo, celdas mayores, uniones limpias), o un límite más bajo del lado de la batería.',
        },
        'cycle-not-short': {
            message: 'El ciclo de {actual} no es corto frente a los {limit} en que se calienta el cable; cada tramo se compara con el límite de temperatura, la corriente eficaz sola no decide.',
        },
        'cycles-end-life': {
            message: 'Los ciclos acaban con la vida de esta opción a los {actual} años, antes que el calendario a los {limit}.',
        },
        'dead-cell': {
            message: 'El bloque da {actual} donde los demás dan {limit}: más o menos una celda menos, en cortocircuito o muerta.',
            action: 'Medir la densidad relativa de sus celdas; si el juego es viejo, cambiar el juego, no el bloque.',
        },
        'deep-discharge': {
            message: 'Se usa una parte de {actual} de la capacidad; más de {limit} desgasta pronto el plomo.',
            action: 'Planear el uso diario con la mitad de la capacidad.',
        },
        'discharge-limit-unknown': {
            message: 'La carga conectada llega a {actual} veces la capacidad por hora; muchas baterías cortan por encima de {limit}.',
            action: 'Leer en la hoja del fabricante la descarga continua y la de pico, con sus segundos, e indicarlas como límites.',
        },
        'discharged-too-deep': {
            message: 'La descarga llegó a {actual}, por debajo de la tensión de corte de {limit}: más carga de la que cuenta, y daña las celdas.',
            action: 'Recargar enseguida; la próxima vez, parar en la tensión de corte.',
        },
        'display-fault': {
            message: 'El indicador marca {actual} veces la velocidad real: ningún neumático ni número de impulsos da eso; un imán anular se deshace, un conector está sucio.',
            action: 'Mirar el sensor, su imán y su conector antes de corregir nada.',
        },
        'display-reads-high': {
            message: 'El indicador marca {actual}; a esta velocidad un vehículo de carretera puede marcar {limit} como mucho.',
        },
        'display-reads-low': {
            message: 'El indicador marca menos que la velocidad real; en un vehículo de carretera no debe hacerlo nunca.',
            action: 'Multiplicar lo que marca por la corrección de la respuesta, y hacerlo ajustar.',
        },
        'display-wrong-by-pulses': {
            message: 'El indicador marca {actual} veces la velocidad real: el sensor da por vuelta otros impulsos que los ajustados; el límite de velocidad y la regeneración según la velocidad se equivocan por el mismo factor.',
            action: 'Ajustar los impulsos por vuelta; hasta entonces, bajar las cuestas con los frenos de fricción.',
        },
        'display-wrong-by-tyre': {
            message: 'El indicador muestra {actual} veces la velocidad real: tanto como cambia por otro neumático u otra relación.',
        },
        'does-not-move': {
            message: 'El tiro en parado no vence la resistencia a la rodadura de {limit}.',
            action: 'Comprobar par, relación y límites; una relación mayor tira más.',
        },
        'does-not-stop': {
            message: 'Bajando esta pendiente los frenos no detienen el vehículo: decelera {actual}, y por debajo de cero acelera.',
            action: 'Evitar esta pendiente, o frenar todas las ruedas.',
        },
        'driver-alone-worse': {
            message: 'El conductor solo deja hacia un lado un factor de {actual}; con todos a bordo es de {limit}: un vehículo más vacío no es más seguro.',
            action: 'Sentar al conductor que va solo más cerca del centro, o poner lastre bajo al otro lado.',
        },
        'duty-above-rating': {
            message: 'Repetida tan a menudo, la resistencia disipa {actual} de media, más que sus {limit}.',
            action: 'Limitar cada cuánto puede intentarse, o tomar una potencia nominal mayor.',
        },
        'duty-unknown': {
            message: 'Un valor nominal sin su servicio no dice cuánto tiempo lo aguanta el motor: puede ser siempre, o unos minutos desde frío.',
            action: 'Leer S1 o S2 y sus minutos en la placa de características.',
        },
        'end-of-life': {
            message: 'De la capacidad de una batería nueva queda una parte de {actual}, menos de {limit}: cuenta como gastada, y lo que queda se pierde más deprisa.',
            action: 'Buscar primero un bloque débil; si todos están iguales, cambiar el juego.',
        },
        'energy-not-counted': {
            message: 'El coste no incluye la energía: se desconoce el precio, el consumo o la energía de un ciclo.',
        },
        'equalising-above-60-v': {
            message: 'Al igualar, la batería puede llegar a {actual}, por encima de {limit} en corriente continua y de lo que soportan las piezas de 60 V: controlador, convertidor y luces deben estar desconectados o soportarlo.',
            action: 'Antes de igualar, desconectar el controlador, el convertidor y todo lo que no esté hecho para esa tensión, salvo que su fabricante la admita.',
        },
        'equalising-gasses': {
            message: 'Toda la carga de igualación convierte agua en gas explosivo, {actual} de hidrógeno: el local necesita {limit} de aire, más que con una carga normal.',
            action: 'Igualar al aire libre o con las puertas abiertas, vigilar la temperatura del ácido y rellenar con agua después.',
        },
        'factor-below-published': {
            message: 'El factor de carga vertical de {actual} está por debajo del intervalo publicado, que empieza en {limit}: los baches cargan el bastidor más que su peso en reposo.',
            action: 'Volver a calcular con el caso de carga «áspero», o con un factor medido en este suelo.',
        },
        'fail-to-rise': {
            message: 'Si el bus no pasa de {limit} tras {actual}, cinco constantes de tiempo, algo consume de él: no cerrar.',
            action: 'Encontrar antes el cortocircuito o el consumo.',
        },
        'faster-than-ideal': {
            message: 'La velocidad medida es {actual} veces la ideal: iba cuesta abajo, o neumático, relación, tensión o motor no son los indicados.',
        },
        'faster-than-limiter': {
            message: 'Este tramo se planea a {actual} y el controlador está ajustado para no pasar de {limit}.',
        },
        'faster-than-proven': {
            message: '{actual} es más que los {limit} desde los que se midió la frenada: la distancia crece con el cuadrado de la velocidad, y los frenos calientes frenan menos.',
            action: 'Subir la velocidad a pasos pequeños y volver a medir.',
        },
        'fault-above-vehicle-fuse': {
            message: 'Un cortocircuito da {actual}; los fusibles para vehículos de carretera cortan {limit}, y los de lámina corrientes, alrededor del doble.',
            action: 'Elegir un fusible con un poder de corte igual o mayor que la corriente de cortocircuito.',
        },
        'fault-may-not-clear': {
            message: 'Con la batería descargada y fría, un cortocircuito en el extremo lejano solo da {actual}, menos del doble del fusible de {limit}: puede durar minutos, o no cortarse nunca.',
            action: 'Elegir un fusible menor o un cable más grueso y más corto.',
        },
        'field-weakened-speed': {
            message: 'La velocidad plena es la mayor que soporta el rotor, y una tracción de corriente alterna la alcanza con el campo debilitado; la potencia tiene que permitirlo.',
        },
        'fish-plates': {
            message: 'El tramo insertado lleva la sección y la pared del larguero, con corte al sesgo, y placas por dentro o por fuera que pasan {limit} de cada unión; ni soldadura a tope vertical, ni placa gruesa sobre larguero delgado.',
            action: 'Hacer que un ingeniero compruebe la flexión con la masa máxima, y pensar en los tubos de freno, los cables, la transmisión y la dirección.',
        },
        'flat-before-the-end': {
            message: 'La batería queda vacía tras {actual}, antes de que pasen {limit}: la de plomo se sulfata y se congela; en la de litio, las celdas por debajo de su tensión de corte forman cobre dentro y pueden arder al cargarlas.',
            action: 'Recargar entretanto o desconectar el consumo; una celda de litio hallada por debajo de su tensión de corte no se vuelve a cargar.',
        },
        'frame-on-ground': {
            message: 'Tan bajado, el bastidor quedaría a {actual}: apoya en el suelo.',
            action: 'Bajarlo menos.',
        },
        'frame-on-ground-laden': {
            message: 'Sobre estos muelles el bastidor cargado quedaría a {actual}: apoya en el suelo o en los topes.',
            action: 'Comprobar las rigideces; quitar carga o montar muelles más rígidos.',
        },
        'friction-high': {
            message: 'Una adherencia de {actual} es más que los {limit} que pueden alcanzar los neumáticos; un valor demasiado alto hace parecer mejores el agarre, la subida y la frenada de lo que son.',
            action: 'Comprobar que es un coeficiente y no un porcentaje, y tomar uno menor.',
        },
        'front-axle-light': {
            message: 'El eje delantero lleva una parte de {actual} del peso; por debajo de {limit} dirige mal, mucho antes de levantarse, y se levanta con facilidad, ante todo al subir o al arrancar con fuerza.',
            action: 'Llevar hacia delante la batería o lo más pesado que vaya detrás, poner lastre delante, alargar la batalla o limitar el par; con remolque, enganchar más bajo y más cerca del eje, o remolcar menos.',
        },
        'front-lift-reserve': {
            message: 'El brazo hasta el eje trasero es {actual} veces la altura del centro de gravedad; a los vehículos todo terreno se les pide {limit} para que no vuelquen hacia atrás.',
            action: 'Llevar masa hacia delante y hacia abajo, y arrancar con suavidad en las cuestas.',
        },
        'front-lifts': {
            message: 'En el caso calculado las ruedas delanteras se levantan del suelo: su parte de la carga es {actual}.',
            action: 'Llevar masa hacia delante, limitar el par o evitar la pendiente.',
        },
        'front-lifts-pulling-away': {
            message: 'Acelerar a fondo desde parado levanta las ruedas delanteras: puede volcar hacia atrás.',
            action: 'Limitar la corriente o hacer más lenta la subida del acelerador; llevar masa hacia delante.',
        },
        'front-light-pulling-away': {
            message: 'Acelerar a fondo desde parado deja en el eje delantero una parte de {actual} del peso: apenas dirige.',
            action: 'Limitar la corriente o hacer más lenta la subida del acelerador.',
        },
        'front-wheels-lift': {
            message: 'Con el remolque enganchado, las ruedas delanteras se levantan del suelo.',
            action: 'Enganchar más bajo y más cerca del eje, remolcar menos o poner lastre delante.',
        },
        'full-charge-over-50-v': {
            message: 'Por su nombre no llega a {limit}, pero a plena carga tiene {actual}: vale la regla más estricta, la de {limit} o más.',
        },
        'full-lock-slides': {
            message: 'Con la dirección a tope, la velocidad prevista pide {actual} de aceleración lateral; los neumáticos aguantan {limit}.',
            action: 'Ir más despacio; un deslizamiento acaba en lo primero que frena las ruedas de golpe.',
        },
        'full-lock-tips': {
            message: 'Con la dirección a tope, la velocidad prevista pide {actual} de aceleración lateral; a {limit} han volcado vehículos parecidos en los ensayos, si los neumáticos aguantan o algo frena las ruedas de golpe.',
            action: 'Ir más despacio, o girar más abierto.',
        },
        'full-pack': {
            message: 'En la batería no cabe lo que devolvería la cuesta, y una batería llena no admite nada aunque se caliente: cuesta abajo cesa la regeneración y con ella su frenado; todo recae en la resistencia de frenado, si la hay, y sin ella quedan solos los frenos de fricción.',
            action: 'Salir de arriba con menos carga, montar una resistencia de frenado o bajar con los frenos de fricción.',
        },
        'fuse-above-cable': {
            message: 'Un fusible de {actual} no protege el cable, que admite {limit}.',
            action: 'Elegir un fusible menor o un cable más grueso.',
        },
        'fuse-before-breaker': {
            message: 'Un cortocircuito da {actual}, y el contactor o la protección de la batería puede cortar {limit}; no se puede decir si el fusible abre antes sin una curva de fusión que llegue al tiempo en que abre el otro.',
            action: 'Indicar puntos de la curva de fusión del fabricante.',
        },
        'fuse-below-load': {
            message: 'En su compartimento el fusible lleva {actual} y la corriente media es {limit}: abre en uso normal.',
            action: 'Elegir un fusible mayor, y el cable que este protege.',
        },
        'fuse-link-over-58-v': {
            message: '{actual} está por encima de {limit}, la clase más alta de los fusibles para vehículos de carretera; los fusibles de vehículo de cuchilla y atornillados no pueden cortarla.',
            action: 'Elegir un fusible con una tensión asignada en corriente continua igual o mayor que la de plena carga.',
        },
        'fuse-temperature-unknown': {
            message: 'El cable está a {actual}; un fusible en ese mismo aire tendría que ser de {limit}, y las cifras de aquí valen para uno en lugar fresco.',
            action: 'Indicar la temperatura del compartimento del fusible.',
        },
        'fuse-too-far': {
            message: 'Antes del fusible hay {actual} de cable que nada protege; se admiten {limit}.',
            action: 'Llevar el fusible junto a la fuente; poner en funda lo que no se pueda acortar.',
        },
        'fuse-voltage-below-full-charge': {
            message: 'Un fusible para {actual} no apaga el arco a {limit}, la tensión de la batería a plena carga.',
            action: 'Elegir un fusible con una tensión asignada en corriente continua igual o mayor que la de plena carga.',
        },
        'fuse-voltage-rating': {
            message: 'El fusible necesita una tensión asignada en corriente continua de al menos {limit}, la de plena carga; la de corriente alterna no cuenta.',
        },
        'fuse-without-margin': {
            message: 'Un fusible de {actual} lleva la corriente media, pero sin la cuarta parte de más que piden horas de uso; para eso hacen falta {limit}.',
            action: 'Elegir el siguiente fusible mayor que admita el cable.',
        },
        'geared-beyond-power': {
            message: 'Está desmultiplicado para {actual}; la potencia basta para {limit} en llano: arranca mal y nunca llega.',
            action: 'Acercar la relación a la adecuada que da la respuesta, o más corta para cuestas.',
        },
        'gravity-not-corrected': {
            message: 'El ácido se leyó a {actual}; las densidades valen a {limit} y en caliente salen más bajas.',
            action: 'Corregir las lecturas, o comparar solo las celdas entre sí.',
        },
        'grip-not-checked': {
            message: 'Sin la posición del centro de gravedad no se puede decir qué ruedas bloquean: los neumáticos de un eje pueden dar menos que sus frenos.',
            action: 'Indicar las cargas por eje y la altura del centro de gravedad.',
        },
        'grounds-earlier': {
            message: 'Al pasar un cambio de rasante, el bastidor toca ahora con {actual}; antes, con {limit}.',
            action: 'Mantener el tramo insertado y lo que cuelga de él por encima de los bajos anteriores.',
        },
        'half-track': {
            message: 'Una vía de {actual} es menor que los {limit} que tendría como mínimo un vehículo así: probablemente se midió media vía.',
            action: 'Medir de centro a centro de neumático, no hasta el medio del vehículo.',
        },
        'headroom-not-known': {
            message: 'Sin capacidad ni estado de carga no se puede decir si la batería tiene margen para la cuesta; se calcula como si lo tuviera.',
        },
        heavier: {
            message: 'El cambio añade {actual}: con los mismos frenos se detiene más tarde, y neumáticos y ejes llevan más.',
            action: 'Comparar las cargas por eje con las admisibles del fabricante.',
        },
        'height-scale-error': {
            message: 'Un kilogramo en la báscula mueve la altura {actual}.',
            action: 'Leer varias veces la báscula con el eje levantado; es la lectura que decide la altura.',
        },
        'held-by-limiter': {
            message: 'La velocidad la limita un ajuste, o un tope que se quita con una herramienta. Las clases preguntan por la velocidad que el vehículo puede alcanzar; un límite que el usuario puede quitar quizá no cuente.',
            action: 'Bloquear el ajuste, documentarlo y preguntar a la autoridad si lo acepta.',
        },
        'held-pulse-above-rating': {
            message: 'Mantenida hasta el fin del plazo, la resistencia recibe {actual}, más que los {limit} que aguanta de una vez.',
            action: 'Acortar el plazo, o tomar una resistencia que aguante un pulso mayor.',
        },
        'hitch-lifts': {
            message: 'El remolque levanta el enganche: quita carga y agarre al eje trasero y oscila.',
            action: 'Cargar el remolque más adelante.',
        },
        'hitch-load-unusual': {
            message: 'El enganche lleva una parte de {actual} del peso de un remolque; en un remolque de un eje es usual alrededor de {limit}.',
        },
        'hold-power-above-rating': {
            message: 'Si algo mantiene el bus a cero, la resistencia disipa {actual} a plena carga, más que sus {limit}.',
            action: 'Tomar una potencia nominal o una resistencia mayores, y un plazo que abra el circuito.',
        },
        'holds-less-than-road-car': {
            message: 'El freno sujeta hasta una pendiente de {actual} en el sentido en que menos sujeta; un coche de carretera tiene que sujetar {limit} en ambos.',
        },
        'holds-one-way-only': {
            message: 'En una pendiente de {actual} el freno lo sujeta así aparcado, pero no al revés: ahí sujeta hasta {limit}, y después cede el freno, deslizan los neumáticos o vuelca.',
            action: 'Aparcarlo en este sentido y calzar las ruedas.',
        },
        'hot-to-touch': {
            message: '{actual} quema un dedo; el metal quema desde {limit}.',
            action: 'Desconectar la batería, abrir la unión, limpiar hasta dejar el metal brillante, cambiar un terminal quemado o corroído por uno estañado y engastado, apretar al par del fabricante y volver a medir.',
        },
        'hotter-than-others': {
            message: 'Está {actual} por encima de las demás a su corriente; hay que actuar desde {limit}.',
            action: 'Desconectar la batería, abrir la unión, limpiar hasta dejar el metal brillante, cambiar un terminal quemado o corroído por uno estañado y engastado, apretar al par del fabricante y volver a medir.',
        },
        'hotter-than-rating': {
            message: 'Según el modelo físico el cable llega a {actual}, por encima de los {limit} de la columna de la tabla; la sección la decide la tabla, el modelo dice lo poco que queda.',
            action: 'Elegir el siguiente cable más grueso, o apartarlo de otros calientes.',
        },
        'hydrogen-ventilation': {
            message: 'La carga desprende hasta {actual} de hidrógeno: el local necesita {limit} de aire y aberturas al exterior.',
            action: 'Cargar con la puerta abierta o dar al local ese caudal de aire, con entrada abajo y salida arriba; un fabricante de vehículos pide cinco renovaciones del aire por hora.',
        },
        'instant-centre-flips': {
            message: 'El centro instantáneo de las ruedas delanteras cambia de lado: en los baches la caída varía ahora en sentido contrario.',
            action: 'Devolver los brazos hacia los ángulos que tenían, con soportes bajados o manguetas.',
        },
        'interrupting-below-fault': {
            message: 'Un fusible que corta {actual} revienta con los {limit} de un cortocircuito.',
            action: 'Elegir un fusible con un poder de corte igual o mayor que la corriente de cortocircuito, por ejemplo de clase T.',
        },
        'jack-knife': {
            message: 'Bajando una pendiente de {actual} los neumáticos traseros no pueden retener el conjunto: desde {limit} los remolques empujan la trasera hacia un lado.',
            action: 'Bajar con menos remolques, ponerles frenos o ponerlos en las ruedas delanteras, y no bajar nunca solo con la regeneración.',
        },
        'joint-above-rating': {
            message: 'Se estabiliza a {actual}, por encima de los {limit} que soportan el terminal y el aislamiento.',
            action: 'No circular. Desconectar la batería, abrir la unión, limpiar hasta dejar el metal brillante, cambiar un terminal quemado o corroído por uno estañado y engastado, apretar al par del fabricante y volver a medir.',
        },
        'joint-heat': {
            message: '{actual} de media en una sola unión; una sana desprende unos pocos vatios.',
            action: 'Desconectar la batería, abrir la unión, limpiar hasta dejar el metal brillante, cambiar un terminal quemado o corroído por uno estañado y engastado, apretar al par del fabricante y volver a medir.',
        },
        'joint-outweighs-cable': {
            message: 'Opone tanta resistencia como {actual} de su cable, que mide {limit}; un cable más grueso cambia poco, los cables cortos fallan en los extremos.',
            action: 'Desconectar la batería, abrir la unión, limpiar hasta dejar el metal brillante, cambiar un terminal quemado o corroído por uno estañado y engastado, apretar al par del fabricante y volver a medir.',
        },
        'laden-overrides': {
            message: 'El vehículo cargado y medido prevalece sobre la suma de vehículo como se pesó, piezas y ocupantes.',
        },
        'lamp-as-precharge': {
            message: 'Un filamento frío tiene cerca de la décima parte de su resistencia en caliente: la primera corriente es muchas veces la indicada aquí, y el tiempo es otro. Una lámpara que sigue encendida indica un cortocircuito o un consumo en el bus.',
            action: 'Usar una resistencia prevista para el impulso; no cerrar nunca el contactor mientras la lámpara brille.',
        },
        'lamp-does-not-precharge': {
            message: 'Una lámpara con electrónica o de descarga no es una resistencia: no carga el condensador.',
            action: 'Usar una resistencia prevista para el impulso.',
        },
        'lead-acid-charge-cold': {
            message: 'A {actual} el plomo-ácido admite la carga despacio: hay que contar con más tiempo que el indicado.',
            action: 'Calentarla por encima de 0 °C (32 °F) antes de cargar.',
        },
        'lead-acid-may-be-frozen': {
            message: 'No cargar: a {actual} esta batería puede estar congelada; con este estado de carga el ácido se congela a {limit}. Cargar una batería congelada puede reventarla.',
            action: 'Calentarla por encima de 0 °C (32 °F), buscar grietas y después cargar.',
        },
        'lead-acid-may-freeze': {
            message: 'A {actual} el ácido se congela con lo que queda en la batería, desde {limit} hacia abajo: las cajas revientan, y un bloque congelado no se debe cargar.',
            action: 'Mantenerla cargada, o guardarla donde haga menos frío.',
        },
        'lead-acid-stored-low': {
            message: 'Guardado con un estado de carga de {actual}, igual o inferior a {limit}, el plomo-ácido se sulfata desde el primer día.',
            action: 'Cargarla antes por completo.',
        },
        'least-capacity-at-temperature': {
            message: 'A {actual} la capacidad es la mínima que garantiza un fabricante de módulos; puede haber más.',
        },
        'leg-too-bent': {
            message: 'A un conductor le faltan {actual} de espacio para una rodilla a 110°, con la guía atrás del todo.',
            action: 'Mover eso los pedales hacia delante o el asiento hacia atrás, o alargar el bastidor.',
        },
        'leg-too-straight': {
            message: 'Un conductor se sienta {actual} demasiado lejos de los pedales para una rodilla a 140°, con la guía delante del todo.',
            action: 'Acercar el asiento o los pedales, o alargar la guía.',
        },
        'legs-read-long': {
            message: 'La mitad de los conductores del estudio se sientan a {actual} por detrás del punto del talón o más cerca; según la suma de la pierna, el conductor mediano pide al menos {limit}. La suma toma los segmentos hasta el exterior de la rodilla, no hasta su eje: su espacio es un límite superior y sus ángulos de rodilla salen bajos.',
            action: 'Tomar las posiciones del estudio como la cifra menor, y sentar a personas en el asiento antes de cortar.',
        },
        'less-pull': {
            message: 'El neumático más alto deja una parte de {actual} de la fuerza en la rueda: sube menos, consume más corriente en las cuestas y puede quedarse parado en ellas.',
            action: 'En cuestas o con una batería débil, elegir un neumático menor o una desmultiplicación más corta.',
        },
        'less-stable': {
            message: 'El centro de gravedad sube y la estabilidad estática baja: con la misma vía vuelca de lado y levanta el tren delantero antes.',
            action: 'Ensanchar la vía en proporción, o bajar la velocidad en las curvas y evitar las laderas.',
        },
        'lift-beyond-guidance': {
            message: 'La elevación de la suspensión cambia la altura en {actual}; las guías para carretera se paran en {limit} sin certificación.',
            action: 'Hacer revisar suspensión, frenos y dirección por alguien autorizado; conservar al menos dos tercios del recorrido en cada sentido.',
        },
        'lifts-its-front-earlier': {
            message: 'Las ruedas delanteras se levantan ahora del suelo en una pendiente de {actual}, antes en {limit}; acelerando y con un movimiento del conductor, aún antes.',
            action: 'Ver la respuesta de estabilidad con este vehículo antes de que suba.',
        },
        'limit-above-ideal-speed': {
            message: 'El límite es {actual} veces la velocidad plena del motor: no actúa nunca.',
        },
        'limiter-gives-way-gradually': {
            message: 'Muchos limitadores ceden poco a poco en una banda alrededor de su ajuste: uno puesto a 6 km/h cedía de 3 a 9 km/h; cuesta abajo ninguno retiene.',
            action: 'Comprobar la velocidad máxima por satélite y bajar el límite lo que se pase.',
        },
        'lithium-charge-below-freezing': {
            message: 'No cargar: las celdas están a {actual}, y ninguna celda de litio admite carga por debajo de {limit}. El metal se deposita dentro, la pérdida queda y la celda puede entrar en cortocircuito. La regeneración también es carga.',
            action: 'Calentar las celdas a 5 °C (41 °F) o más, y después cargar.',
        },
        'lithium-charge-cold': {
            message: 'Las celdas, a {actual}, están por debajo de los {limit} desde los que conviene cargar el litio; la gestión de la batería puede reducir la corriente.',
            action: 'Calentar las celdas o cargar despacio.',
        },
        'lithium-charge-hot': {
            message: 'Las celdas, a {actual}, están por encima de los {limit} hasta los que conviene cargar el litio.',
            action: 'Dejar enfriar las celdas y después cargar.',
        },
        'lithium-stored-full': {
            message: 'Una batería de litio guardada con un estado de carga de {actual} envejece más deprisa que con uno de alrededor de {limit}.',
            action: 'Guardarla con un estado de carga de 0,4 a 0,6, salvo que el fabricante diga otra cosa.',
        },
        'little-margin': {
            message: 'El larguero tiene un factor de seguridad de {actual} frente al límite elástico; se pide {limit}, y las soldaduras y la fatiga necesitan más.',
            action: 'Acortar el brazo, aligerar la caja, elegir un larguero más alto o apoyarlo con un tornapunta.',
        },
        'little-room-for-spikes': {
            message: 'El controlador soporta {limit}; el margen para los picos de la frenada pide {actual}, 1,2 veces la plena carga.',
            action: 'Reducir la regeneración antes de que la batería esté llena, o poner menos celdas; preguntar al fabricante la tensión de los condensadores.',
        },
        'load-holds-bus': {
            message: 'Con la carga que consume entretanto el bus se queda en {actual}, por debajo de los {limit} a los que puede cerrar el contactor.',
            action: 'Conectar la carga después del contactor, o elegir una resistencia menor.',
        },
        'load-not-used': {
            message: 'Se indicaron un recorrido y una carga constante; se responde al recorrido.',
            action: 'Quitar el recorrido para preguntar por la carga constante.',
        },
        'load-power-above-rating': {
            message: 'Con la carga que consume mientras tanto, la resistencia disipa {actual} de forma permanente, más que sus {limit}.',
            action: 'Mantener la carga desconectada hasta que el contactor haya cerrado.',
        },
        'longer-than-a-night': {
            message: '{actual} es más que una noche de {limit}; en plomo-ácido, solo el último quinto tarda hasta 8 h.',
            action: 'Empezar antes, recargar más a menudo o ver qué limita la corriente.',
        },
        'longer-than-car': {
            message: 'Un coche de carretera tiene que detenerse en {limit} desde que actúan los frenos; este necesita {actual}; ninguna norma conocida obliga a este tipo de vehículo.',
            action: 'Guardar más distancia de la que espera el resto del tráfico.',
        },
        'longer-than-rated': {
            message: 'Esto dura {actual}; el motor está previsto para {limit} seguidos, desde frío.',
            action: 'Dejarlo enfriar antes de seguir.',
        },
        'looks-charged-but-empty': {
            message: 'En reposo parece cargado, pero bajo carga una celda tiene {actual}, por debajo de la reserva de {limit}: está vacía, gastada, o una conexión está mal.',
            action: 'Cargar enseguida; si hace lo mismo con la batería llena, medir cada bloque bajo carga.',
        },
        'manual-closing': {
            message: 'Un contactor que se cierra a mano se cierra algún día sin precarga, y se suelda.',
            action: 'Dejar que la tensión del bus o un temporizador libere el contactor.',
        },
        'measured-rollout': {
            message: 'Todo se calcula con el desarrollo medido de {actual}; por su medida el neumático rodaría {limit}.',
        },
        'measured-speed-not-used': {
            message: 'La velocidad medida, {actual}, está demasiado lejos de la calculada, {limit}, para calibrar nada, o un limitador la retiene: alguno de los datos no es como se indicó.',
            action: 'Comprobar neumático, relación, tensión del motor y unidad de la velocidad.',
        },
        'measured-stop-at-grip': {
            message: 'La frenada medida la limitaron los neumáticos, así que los frenos pueden ser más fuertes que los {actual} que muestra; con más masa la distancia no tiene por qué crecer como se indica.',
        },
        'measured-stop-beats-friction': {
            message: 'La frenada medida exige una adherencia de {actual} y el suelo se indicó con {limit}: se midió en mejor suelo, o la velocidad o la distancia no son correctas.',
            action: 'En peor suelo los neumáticos limitan antes la frenada: contar con la distancia que se indica aquí.',
        },
        'measured-stop-bounds-both': {
            message: 'La frenada medida muestra {actual}. Sin la adherencia del suelo no se puede decir si la limitaron los frenos o los neumáticos: ambos dan al menos esto; se calcula con frenos que dan justo esto.',
            action: 'Anotar si bloquearon ruedas, e indicar la adherencia de ese suelo.',
        },
        'measured-stop-disagrees': {
            message: 'La frenada medida da {actual}, las cifras de los frenos {limit}; se calcula con lo medido.',
            action: 'Comprobar los forros, el ajuste y si el par es el de ambas ruedas.',
        },
        'melts-terminal': {
            message: '{actual} en una sola unión, tanto como un soldador o más; en baterías de plomo, el plomo funde a 327 °C, gotea y enciende el hidrógeno que hay encima.',
            action: 'No circular. Desconectar la batería, abrir la unión, limpiar hasta dejar el metal brillante, cambiar un terminal quemado o corroído por uno estañado y engastado, apretar al par del fabricante y volver a medir.',
        },
        'mixed-in-series': {
            message: 'Hay bloques o celdas de distinta edad o tipo en serie: el más débil se sobrecarga y se descarga del todo cada vez, puede invertirse y se lleva consigo el juego.',
            action: 'Cambiar las de plomo por juegos completos; no poner nunca en serie celdas de litio distintas.',
        },
        'more-than-new': {
            message: 'La descarga dio {actual} veces lo que da una batería nueva: ¿es la capacidad la de una rama, son correctas las horas nominales, es la corriente la de toda la batería?',
            action: 'Comprobar la capacidad, las horas nominales, las ramas en paralelo y la corriente.',
        },
        'motor-above-plate-voltage': {
            message: 'La batería tiene {actual} a su tensión nominal y la placa del motor admite {limit}: con ello aumentan la velocidad, el calor y el desgaste de escobillas y rodamientos.',
            action: 'Indicar la velocidad que soporta el rotor, poner un tope de velocidad y vigilar la temperatura; frenos, neumáticos y estabilidad deben corresponder.',
        },
        'motor-below-plate-voltage': {
            message: 'La batería tiene {actual} a su tensión nominal, menos que {limit}: la velocidad máxima baja en proporción.',
        },
        'motor-brake-locks': {
            message: 'Cuando se corta la alimentación, el freno del motor pide {actual} a las ruedas motrices y sus neumáticos dan {limit}: se bloquean al instante, sin aviso, y nadie puede soltarlas.',
            action: 'Un muelle más débil o una actuación retardada; las relaciones mayores lo empeoran.',
        },
        'motor-current-above-rating': {
            message: 'El controlador deja pasar {actual} a un motor de {limit} nominales: vale para arrancar, no para una cuesta larga.',
            action: 'Vigilar la temperatura del motor en pendientes largas, o bajar el límite del lado del motor.',
        },
        'motor-leads-below-controller': {
            message: 'Calculado para {actual}, mientras que el controlador da hasta {limit} por el lado del motor; la corriente del lado de la batería no es la del motor.',
            action: 'Indicar la corriente del lado del motor en un arranque y en la subida más fuerte.',
        },
        'motor-overheats': {
            message: 'Tirar así calienta el motor {actual} veces lo que admite su valor nominal: no puede seguir así de continuo; lo que aguante partiendo de frío es un tiempo limitado, y luego debe enfriarse.',
            action: 'Remolcar menos, usar una relación mayor o vigilar la temperatura del motor.',
        },
        'motor-overspeed': {
            message: 'A esta tensión el motor gira a {actual} y el rotor soporta {limit}: los devanados salen despedidos.',
            action: 'Poner en el controlador un tope de velocidad por debajo del límite del rotor, o bajar la tensión.',
        },
        'motor-stalls': {
            message: 'El motor necesita {actual} y da {limit} como máximo: se para, y toda su corriente es calor.',
            action: 'Remolcar menos o usar una relación mayor.',
        },
        'motor-voltage-not-stated': {
            message: 'La velocidad del motor se tomó como se indicó: nada dice a qué tensión vale.',
        },
        'near-stall': {
            message: 'El motor gira muy despacio: la mitad de la potencia o más puede convertirse en calor en él, y al arrancar toda; su propio ventilador refrigera poco y no vale un único rendimiento.',
            action: 'Indicar la resistencia del motor y un par con su corriente; juzgar por la corriente del motor, y usar una relación mayor para esta pendiente o para trabajo continuo al paso.',
        },
        'never-equalise': {
            message: 'No igualar nunca esta batería: las celdas selladas se secan y las de litio se sobrecargan; no se calcula nada para ello.',
            action: 'Prescindir de la igualación y ajustar el cargador al perfil de esta química.',
        },
        'no-charge-at-temperature': {
            message: 'A {actual} los límites de esta batería no admiten carga alguna.',
            action: 'Llevar las celdas a una temperatura para la que el fabricante dé una corriente de carga.',
        },
        'no-charge-while-frozen': {
            message: 'Estar parada a {actual} apenas daña; cargar por debajo de {limit} sí, y regenerar es cargar.',
            action: 'Calentar las celdas por encima de 5 °C antes de cargar.',
        },
        'no-clear-winner': {
            message: 'La mejor opción aventaja a la siguiente en una parte de {actual}, menos que {limit}: la respuesta depende de la vida y del uso.',
            action: 'Decidir por lo demás que cuenta: masa, mantenimiento, autonomía, quién da servicio.',
        },
        'no-credit-for-cold': {
            message: 'A {actual} el cable podría llevar más; la tabla vale a {limit} y se usa tal cual.',
        },
        'no-downhill': {
            message: 'Ningún tramo del recorrido baja: no hay nada que retener.',
            action: 'Indicar una cuesta, o tramos con pendiente menor que cero.',
        },
        'no-fuse-in-motor-leads': {
            message: 'Los cables del motor no llevan fusible; los limita el controlador, y el fusible de la batería protege el cableado anterior. Calculados como dos cables de corriente continua; en trifásica, cada uno lleva la corriente de fase.',
        },
        'no-fuse-in-window': {
            message: 'Ningún fusible normalizado lleva la corriente (al menos {actual}) y protege el cable (como máximo {limit}).',
            action: 'Elegir el cable más delgado de los que protege un fusible normalizado; si no hay ninguno en la serie, un cable más grueso que los de la serie, o dividir el circuito.',
        },
        'no-gauge-at-rest': {
            message: '{actual} por celda cae en la parte plana de la curva: entre el 20 y el 90 %, la tensión de las celdas de litio-ferrofosfato no indica la carga.',
            action: 'Cargarla del todo y contar los amperios hora desde ahí.',
        },
        'no-grip-for-the-grade': {
            message: 'Los neumáticos motrices suben {limit} como máximo; en {actual} patinan o se levanta el tren delantero.',
            action: 'No intentarlo tomando impulso: acaba rodando hacia atrás.',
        },
        'no-light-class-above-25-mph': {
            message: 'A {actual} ninguna clase ligera de Estados Unidos o Canadá lo admite en la vía pública: por encima de {limit} es un vehículo de motor que debe cumplir todas las normas de un automóvil, entre ellas los ensayos de choque. Ni una jaula antivuelco ni la regla de velocidad media de un estado las sustituyen.',
            action: 'Limitarlo por debajo del límite de baja velocidad, o no usarlo en vías públicas.',
        },
        'no-net-consumption': {
            message: 'En todo el recorrido la batería gana tanto como gasta: no hay autonomía que dar.',
            action: 'Un recorrido que acaba más abajo de donde empieza no se puede repetir: añadir la vuelta.',
        },
        'no-resistor-between': {
            message: 'Ninguna resistencia normalizada respeta la corriente ({limit} como mínimo) y a la vez llena el condensador en la mitad del tiempo límite ({actual} como máximo).',
            action: 'Admitir más tiempo o más corriente.',
        },
        'no-room-for-spread': {
            message: '{actual} por celda de media deja poco margen hasta {limit}: la celda más alta llega antes que la batería, y la gestión de la batería termina la carga.',
            action: 'Una tensión final algo menor en el uso diario; la gestión de la batería debe equilibrar las celdas.',
        },
        'no-size-passes': {
            message: 'Ningún tamaño de la serie lleva {actual} dentro de los límites, ni siquiera con cuatro conductores en paralelo.',
            action: 'Acortar el tendido, subir la tensión, enfriar el entorno o encargar su diseño.',
        },
        'no-timeout': {
            message: 'No se indica tiempo límite: un circuito que nada abre quema su resistencia en cuanto algo mantiene baja la tensión del bus.',
            action: 'Abrir el circuito si la tensión del bus no ha subido en 2 a 3 veces el tiempo esperado.',
        },
        'nobody-aboard': {
            message: 'No se indicó ningún ocupante: las personas van altas y a un lado, y hacen que vuelque antes de lo que dicen estas cifras.',
            action: 'Indicar a todos los que puedan ir sentados, primero el conductor.',
        },
        'nose-high': {
            message: 'El morro apunta {actual} más arriba que como estaba: el ángulo de avance crece otro tanto y los faros deslumbran.',
            action: 'Subir la parte trasera con su separador o sus muelles, o mover carga hacia delante; volver a reglar los faros.',
        },
        'not-at-rest': {
            message: 'Tras {actual} la tensión aún se mueve: demasiado alta después de una carga, demasiado baja después de circular; solo indica la carga después de {limit}.',
            action: 'Medir otra vez tras una noche sin cargador.',
        },
        'not-broken-in': {
            message: 'Da una parte de {actual} de la capacidad con las cargas que lleva; un juego nuevo da {limit} a esa edad y va a más.',
            action: 'Por ahora no usar más del 80 %, y repetir la prueba tras 45 cargas.',
        },
        'odd-block': {
            message: 'Este bloque mide {actual} y el valor central es {limit}: se aparta de los demás.',
            action: 'Limpiar y apretar sus bornes y medir otra vez; cargarlo por separado; si sigue apartándose, es el débil.',
        },
        'odd-joint': {
            message: 'Su resistencia es {actual} veces la mediana de todas las uniones.',
            action: 'Aislar la batería, abrir la unión, limpiar hasta el metal brillante, cambiar un terminal quemado o corroído por uno estañado y engastado, apretar al par del fabricante y medir otra vez.',
        },
        'one-fuse-for-parallel-runs': {
            message: 'Un solo fusible para {actual} conductores en paralelo no protege a cada uno cuando otro se abre.',
            action: 'Poner a cada conductor su propio fusible.',
        },
        'one-spring': {
            message: 'Se supone que un solo muelle lleva todo el eje; si hay uno a cada lado, indicar 2 muelles y la rigidez de uno de ellos.',
        },
        'only-for-equalising': {
            message: '{actual} por celda es una carga de igualación; una normal termina en {limit}.',
            action: 'Solo de vez en cuando, según las instrucciones del fabricante de la batería, con ventilación y con la electrónica desconectada.',
        },
        'only-for-the-peak': {
            message: 'El controlador puede tomar {actual}; la batería da {limit} de continuo: si una cuesta pide más que eso durante más tiempo que el del pico, la gestión de la batería abre con carga restante.',
            action: 'Bajar el límite del lado de la batería al valor continuo, o su tiempo al del pico.',
        },
        'only-the-maker-rates': {
            message: 'Las clases van por la masa máxima que declara el fabricante, no por lo que pesa el vehículo; quien lo modifica no puede calcular una mayor.',
        },
        'outlet-rating-unconfirmed': {
            message: 'Los {limit} durante horas en esta base de enchufe no proceden de la propia norma.',
            action: 'Guiarse por el marcado de la base y por las normas locales.',
        },
        'outside-class-b': {
            message: 'Con el punto de cadera a {actual} sobre el talón no valen las rectas del asiento del estudio: las alturas para las que se hicieron acaban en {limit}. Más allá no se lee nada.',
            action: 'Guiarse por los ángulos de la rodilla y sentar a personas en el asiento.',
        },
        'over-60-v': {
            message: 'Con la batería llena, el circuito está a {actual}, por encima de los {limit} hasta los que se considera inofensivo un contacto en seco.',
        },
        'over-charge-limit': {
            message: 'Cuesta abajo, la frenada con el motor carga con {actual} y la batería admite {limit}: si el controlador se limita, los frenos de fricción toman el resto; si no, la gestión de la batería abre y el freno eléctrico desaparece.',
            action: 'Menos regeneración: ajustar la corriente de regeneración del controlador por debajo del límite, ir más despacio o poner una resistencia de frenado; el freno mecánico debe retener solo.',
        },
        'over-continuous-discharge': {
            message: 'La batería da {actual}, por encima de su límite continuo de {limit}: debe terminar dentro del tiempo de su límite de pico; si no, la gestión de la batería abre y el vehículo se para con carga restante.',
            action: 'Comparar con el límite de pico lo que duran la aceleración, la subida o la carga; elegir la batería por su corriente de descarga, no solo por su capacidad, o menos velocidad o carga.',
        },
        'over-controller-limit': {
            message: 'Este tramo pide {actual} y el controlador deja pasar {limit}: el vehículo va más despacio de lo pedido.',
            action: 'Planear menos velocidad en este tramo.',
        },
        'over-peak-discharge': {
            message: 'Se piden {actual} a la batería y su límite de pico es {limit}: la gestión de la batería abre y el vehículo se para con carga restante.',
            action: 'Ajustar por debajo el límite del controlador del lado de la batería; elegir la batería por su corriente de descarga, no solo por su capacidad, o menos velocidad o carga.',
        },
        'over-rated-torque': {
            message: 'El motor da aquí {actual}, por encima de sus {limit} nominales: se calienta mientras esto dure.',
            action: 'Usar una relación mayor, subir en tramos cortos con descansos, o montar una limitación térmica.',
        },
        'over-rating': {
            message: 'La carga es de {actual}, más que la admisible de {limit}.',
            action: 'Quitar masa o moverla; quien modifica el vehículo no puede subir una carga admisible.',
        },
        'over-yield': {
            message: 'Este larguero se dobla de forma permanente: la tensión de {actual} supera su límite elástico de {limit}.',
            action: 'Acortar el brazo, aligerar la caja, poner un larguero de más canto o apuntalarlo; decide un ingeniero.',
        },
        'pack-disconnects': {
            message: 'Cuando la gestión de la batería abre, se funde un fusible o se suelta un cable, la regeneración desaparece al instante y la tensión en el controlador se dispara: los frenos de fricción deben entonces absorber {actual} solos.',
            action: 'Probar que los frenos lo retienen solos; mantener la corriente de carga muy por debajo del punto en que dispara la gestión.',
        },
        'pack-heavier-than-usual': {
            message: '{actual} es mucho para esta energía; las baterías así pesan {limit} como mucho: ¿está en libras, o la capacidad es la de una sola rama?',
            action: 'Pesar la batería, y comprobar química, capacidad y ramas.',
        },
        'pack-lighter-than-usual': {
            message: '{actual} es poco para esta energía; las baterías así pesan {limit} o más: ¿es la masa de un bloque, o una capacidad que no hay?',
            action: 'Pesar la batería, y comprobar química, capacidad y ramas.',
        },
        'pack-of-another-system': {
            message: 'La batería tiene {actual}, menos que {limit}: corresponde a una tensión de sistema inferior a la del motor.',
            action: 'Antes de nada, contar los bloques y multiplicar por su tensión.',
        },
        'pack-voltage-below-cut-off': {
            message: '{actual} está por debajo del fin de descarga, {limit}: una batería vacía, un bloque malo o una conexión mala.',
            action: 'Medir cada bloque por separado, también la polaridad, antes de la próxima carga.',
        },
        'parallel-runs': {
            message: '{actual} conductores en paralelo solo se reparten la corriente si son iguales en longitud, cable y terminales; cada uno necesita su propio fusible.',
        },
        'parking-brake-not-known': {
            message: 'Nada dice cuánta fuerza tiene el freno de estacionamiento: esto es lo que sujetan los neumáticos.',
            action: 'Probarlo en una rampa de pendiente conocida, en los dos sentidos, con alguien que sujete un calzo.',
        },
        'peak-above-fuse': {
            message: 'El pico de {actual} supera los {limit} del fusible, que debe aguantar más que el pico.',
            action: 'Comparar el pico y su duración con el tiempo mínimo de fusión de la curva del fabricante del fusible; indicar puntos de esa curva.',
        },
        'peak-above-limit': {
            message: 'La primera corriente, {actual}, pasa del límite de {limit}.',
            action: 'Tomar una resistencia mayor.',
        },
        'peak-beyond-curve': {
            message: 'El pico de {actual} queda más allá del último punto de la curva de fusión.',
            action: 'Indicar puntos hasta el pico.',
        },
        'peak-melts-fuse': {
            message: 'Un pico normal dura {actual} veces lo que aguanta el fusible.',
            action: 'Poner un fusible más lento o mayor, y el cable que este protege.',
        },
        'peak-must-be-short': {
            message: 'Si la corriente máxima durase, la unión se estabilizaría a {actual}, por encima de {limit}.',
            action: 'Mantener cortos los picos y medir la unión después de la subida más larga.',
        },
        'peak-too-long': {
            message: 'El tramo dura {actual} y el pico se admite durante {limit}.',
            action: 'Subir este tramo más despacio, menos carga, o una batería para más corriente.',
        },
        'peukert-on-a-mixed-load': {
            message: 'La capacidad se toma a la corriente media del recorrido. La ley de Peukert vale para corriente constante: exagera la pérdida donde la batería puede descansar y se queda corta donde algunos tramos piden mucho más.',
        },
        'pitches-over': {
            message: 'Frenar tan fuerte como permiten los neumáticos delanteros levanta las ruedas traseras, a {actual}.',
            action: 'Bajar la carga o moverla hacia atrás.',
        },
        'pitches-when-braking': {
            message: 'Al frenar al límite de sus neumáticos, un eje se levanta del suelo antes de que el conjunto se detenga.',
        },
        'planned-turn-slides': {
            message: 'En el radio previsto, la velocidad prevista pide {actual} de aceleración lateral; los neumáticos aguantan {limit}.',
            action: 'Ir más despacio; un deslizamiento acaba en lo primero que frena las ruedas de golpe.',
        },
        'planned-turn-tips': {
            message: 'En el radio previsto, la velocidad prevista pide {actual} de aceleración lateral; a {limit} han volcado vehículos parecidos en los ensayos, si los neumáticos aguantan o algo frena las ruedas de golpe.',
            action: 'Ir más despacio, o girar más abierto.',
        },
        'point-within-tyre': {
            message: 'El punto queda dentro del contorno del neumático, donde ninguna rampa llega a él: la construcción con la tangente no da ningún ángulo.',
            action: 'Dar el punto de los bajos que esté más lejos de la rueda.',
        },
        'power-beyond-pack': {
            message: 'Se piden {actual} a la batería, más de lo que su resistencia interna le deja dar; lo que depende de ello queda sin responder.',
            action: 'Comprobar la unidad de la resistencia y a qué corresponde; una batería así necesita menos carga o más ramas en paralelo.',
        },
        'power-may-be-input': {
            message: '{actual} en el eje es casi todo lo que puede dar la tensión de la batería por la corriente del controlador, {limit}: parece la entrada eléctrica, o un pico.',
            action: 'Indicar la potencia continua en el eje.',
        },
        'precharge-every-closing': {
            message: 'No se dice qué puede cerrar el contactor: una protección que vuelve a cerrar por sí sola lo suelda.',
            action: 'Indicar en «Cerrado por» qué puede cerrarlo; cada cierre necesita su precarga.',
        },
        'profile-of-another-chemistry': {
            message: 'El cargador está ajustado para una química distinta de la de la batería: tensión final equivocada y fases que la dañan.',
            action: 'Ajustar el perfil del fabricante de la batería; si no lo hay, otro cargador.',
        },
        'prop-buckles': {
            message: 'La tornapunta de este larguero recibe una compresión de {actual}; con el factor de seguridad, pandea a {limit}.',
            action: 'Poner un tubo más robusto o acortar la tornapunta.',
        },
        'prop-does-not-give': {
            message: 'Sin su sección, la tornapunta cuenta como si no cediera: una real cede y deja más carga al larguero.',
            action: 'Indicar la sección de la tornapunta.',
        },
        'prop-overloaded': {
            message: 'La tornapunta de este larguero está cargada a {actual} veces lo que soporta con el factor de seguridad.',
            action: 'Poner un tubo más robusto.',
        },
        'protection-closes-again': {
            message: 'Una protección que vuelve a cerrar por sí sola tras dispararse cierra sobre un condensador vacío y suelda los contactos; después el vehículo no se puede desconectar.',
            action: 'Precargar antes de cada cierre, también cuando se recupera la gestión de la batería; enclavar el contactor con la tensión del bus.',
        },
        'pulse-above-rating': {
            message: 'Una precarga pone {actual} en la resistencia, más que los {limit} que aguanta de una vez.',
            action: 'Tomar una resistencia que aguante un pulso mayor; su valor no cambia la energía.',
        },
        'pulse-rating-unknown': {
            message: 'Los vatios de una resistencia dicen lo que soporta de forma permanente; en el primer instante recibe muchas veces eso, y solo una energía de impulso admisible en julios dice que sobrevive.',
            action: 'Leer la energía de impulso en la hoja de datos; las bobinadas son las que más aguantan.',
        },
        'quiescent-load-empties': {
            message: 'Lo que queda conectado gasta en un mes una parte de {actual}; la autodescarga, {limit}.',
            action: 'Abrir el interruptor general o soltar un borne; medir la corriente con pinza amperimétrica.',
        },
        'rail-lifted': {
            message: 'La caja cuelga fuera de los largueros: tira de este hacia arriba con una parte de {actual}, y carga el otro con más que todo su peso.',
            action: 'Llevar la caja entre los largueros.',
        },
        'raised-axle-angle-small': {
            message: 'El pesaje con el eje levantado inclina la batalla solo {actual}; por debajo de {limit} pesa demasiado el error de la báscula y la altura no es de fiar.',
            action: 'Levantar más el eje, pesar con varios ángulos y tomar la media.',
        },
        'range-is-an-estimate': {
            message: '{actual} sale de la resistencia a la rodadura, el aire y el rendimiento de la tracción: cada uno puede errar en un tercio. Si es menos que lo que logran los dueños de vehículos ligeros conducidos con suavidad, cabe esperar menos autonomía que la mostrada.',
            action: 'La medida que más ayuda: amperios con pinza en el cable de la batería, a velocidad constante y en llano. Ajustar el rendimiento de la tracción y la resistencia a la rodadura hasta que coincida la corriente del tramo.',
        },
        'rated-power-is-the-limit': {
            message: 'La potencia asignada se toma como lo máximo que da el motor; durante algunos minutos puede dar más.',
            action: 'Indicar la curva del fabricante o, de un motor de corriente continua, su resistencia y un par con su corriente.',
        },
        'rated-power-over-continuous': {
            message: 'A su potencia asignada el motor toma {actual} de la batería, que da {limit} de continuo.',
            action: 'Contar de continuo con menos que la potencia asignada.',
        },
        'rating-above-axles': {
            message: 'La masa máxima del vehículo es {actual}; la de sus ejes juntos, {limit}.',
            action: 'Leer otra vez la placa: la masa máxima de un vehículo no supera la de sus ejes juntos.',
        },
        'rating-below-least': {
            message: 'La masa en vacío, la carga útil nominal y 68 kg (150 lb) por asiento suman {actual}, más que la masa máxima de {limit}.',
            action: 'Quitar asientos o masa, o declarar menos carga útil.',
        },
        'rating-is-no-trip-current': {
            message: '{actual} es lo que lleva el fusible, no donde abre: {limit} pueden circular una hora, y el doble del calibre, de segundos a minutos.',
        },
        'ratio-applied-twice': {
            message: 'La velocidad medida se aparta de la calculada más o menos en la propia relación, como si se hubiera aplicado dos veces.',
            action: 'Comprobar la unidad de la velocidad y dónde se puso la relación; marcar el neumático y el suelo, rodar una vuelta con el conductor a bordo e indicar el desarrollo; contar los dientes.',
        },
        'ratio-below-one': {
            message: 'Una relación de {actual} hace girar la rueda más deprisa que el motor; probablemente se quería decir la inversa.',
            action: 'Dar las vueltas del motor por cada vuelta de la rueda.',
        },
        'ratio-from-teeth': {
            message: 'Se lee como {actual} vueltas del motor por cada vuelta de la rueda: el número mayor entre el menor.',
            action: 'Indicar la relación como número si la rueda gira más deprisa que el motor.',
        },
        'rear-brakes-downhill': {
            message: 'Bajando esta pendiente, las ruedas traseras, las únicas que frenan, dejan {actual} para detenerse; en llano son {limit}. Si no queda más de cero, no pueden retenerlo; si se bloquean, la parte trasera se cruza.',
            action: 'Frenos en las cuatro ruedas antes de aumentar la velocidad, la altura o la carga; bajar al paso.',
        },
        'rear-brakes-only': {
            message: 'Solo frenan las ruedas traseras: al frenar pierden carga, y bajando aún más; cuesta abajo se bloquean primero. Con las traseras bloqueadas y las delanteras rodando, el vehículo se cruza, sobre todo cuesta abajo, y puede volcar; con más velocidad, pendiente o elevación, los mismos frenos valen menos.',
            action: 'Frenos en las cuatro ruedas antes de aumentar la velocidad, la altura o la carga; hasta entonces, bajar las pendientes al paso y no frenar nunca fuerte en una curva.',
        },
        'rear-facing-launch': {
            message: 'Puede arrancar con {actual}, y nada sujeta por delante a quien va sentado mirando hacia atrás.',
            action: 'Una barra o un cinturón delante del ocupante, y un arranque suave ajustado en el controlador.',
        },
        'rear-grip-half-used': {
            message: 'Mantener la velocidad cuesta abajo usa una parte de {actual} del agarre de los neumáticos traseros, en seco y sin baches.',
            action: 'Bajar más despacio y en línea recta; llevar menos remolques cuando esté mojado.',
        },
        'rear-locks-first': {
            message: 'Las ruedas traseras se bloquean primero, a {actual}: la parte trasera se cruza.',
            action: 'Menos freno detrás o más delante, hasta que se bloqueen primero las ruedas delanteras.',
        },
        'recharge-before-the-end': {
            message: 'Recargar en un plazo de {actual}, antes de que pasen los {limit}.',
            action: 'Cargarla del todo entretanto; si es de litio, volver después a la mitad más o menos.',
        },
        'regeneration-below-freezing': {
            message: 'La regeneración carga la batería, y a {actual} las celdas de litio no deben cargarse: por debajo de {limit} se deposita metal en su interior.',
            action: 'Sin regeneración, o con las celdas calentadas, hasta que estén por encima del punto de congelación; los frenos deben retener solos.',
        },
        'regeneration-into-full-pack': {
            message: 'Una batería llena no admite la corriente que devuelve la frenada y no debe recibir regeneración alguna.',
            action: 'Salir sin la batería llena, o ajustar la tracción para que no regenere con la batería llena; ajustar la caída de la regeneración según las celdas de esta batería, no con un valor de fábrica para menos celdas; los frenos deben retener solos.',
        },
        'regeneration-not-counted': {
            message: 'Las distancias de parada no cuentan con la regeneración: una batería llena, fría o desconectada la elimina.',
        },
        'regeneration-over-charge-limit': {
            message: 'La frenada devuelve hasta {actual} y la batería puede cargarse con {limit}: la gestión de la batería abre y con ello desaparece el freno eléctrico.',
            action: 'Bajar la corriente de regeneración al límite de carga; el freno mecánico debe retener solo.',
        },
        'regeneration-over-voltage': {
            message: 'Frenar con la batería llena la sube a {actual}, por encima de {limit}: la gestión de la batería o el controlador abre y el freno eléctrico desaparece.',
            action: 'Reducir la regeneración hasta cero antes de que la batería esté llena; el freno mecánico debe retener solo.',
        },
        'regeneration-slides': {
            message: 'La regeneración pide {actual} a las ruedas motrices y sus neumáticos dan {limit}: patinan.',
            action: 'Ajustar menos regeneración; solo frena su propio eje.',
        },
        'regeneration-too-cold': {
            message: 'Estas celdas no admiten carga por debajo de {limit}, y están a {actual}: el metal se deposita dentro, la pérdida queda y la celda puede entrar en cortocircuito.',
            action: 'Sin regeneración hasta que las celdas estén templadas; los frenos tienen que bastar por sí solos.',
        },
        'regeneration-too-hot': {
            message: 'Estas celdas no admiten carga por encima de {limit}, y están a {actual}; la regeneración es carga.',
            action: 'Dejar que las celdas se enfríen antes.',
        },
        'resistance-reads-low': {
            message: 'Un medidor de 1 kHz indica menos que la resistencia en carga: la tensión caerá más de lo mostrado.',
            action: 'Medir el salto de tensión tras diez segundos con una corriente conocida e indicarlo con el método «continua, 10 s».',
        },
        'resistance-too-high': {
            message: 'Una resistencia de {actual} no absorbe la potencia a esta tensión; lo haría una de {limit} como mucho.',
        },
        'resistor-left-in-line': {
            message: 'Si se queda en serie, la resistencia no soporta más de {limit}; la propia corriente del vehículo la quema.',
            action: 'Puentearla con el contactor principal antes de conectar cualquier carga, y hacer que un tiempo límite abra el circuito.',
        },
        'resistor-overloaded': {
            message: 'Con una batería que no admite nada, la resistencia recibe {actual} y soporta {limit} de forma prolongada.',
            action: 'Comprobarla con la curva del fabricante para los minutos que dura la cuesta.',
        },
        'rest-time-unknown': {
            message: 'No se sabe cuánto reposó la batería: la tensión solo indica su carga después de {limit}.',
            action: 'Indicar el tiempo desde la última carga o marcha.',
        },
        'restraint-low': {
            message: 'La sujeción lateral de quien va de espaldas a la marcha llega a {actual} sobre el asiento; las curvas cerradas exigen {limit}.',
            action: 'Montar una sujeción más alta.',
        },
        'restraint-not-known': {
            message: 'Hay una persona de espaldas a la marcha: medir la sujeción lateral, que debe llegar a {limit} sobre el asiento.',
        },
        'reversed-block-suspected': {
            message: 'La batería marca {actual}; con todos los bloques llenos y uno de ellos al revés marcaría {limit}.',
            action: 'Medir cada bloque por separado, con su signo, antes de cualquier carga.',
        },
        'ride-frequency': {
            message: 'Este eje suspende a {actual}, fuera del margen que acaba en {limit}: si es menos, flota y hace tope pronto; si es más, aun cargado va más duro que un coche cómodo.',
            action: 'Comprobar que «Rigidez del muelle» es la de un solo muelle: dar una sola cifra para los dos juntos desvía la frecuencia en un factor de 1,4.',
        },
        'rise-beyond-guidance': {
            message: 'La elevación del bastidor sobre el eje cambia la altura en {actual}; las guías para carretera se paran en {limit} sin certificación.',
            action: 'Hacer revisar suspensión, frenos y dirección por alguien autorizado; conservar al menos dos tercios del recorrido en cada sentido.',
        },
        'rise-far-from-reading': {
            message: 'La temperatura se extrapola a {actual} veces la corriente de la medida; una unión empeora al calentarse, así que puede estar más caliente.',
            action: 'Medir más cerca de la corriente que lleva.',
        },
        'rises-differ': {
            message: 'Delante y detrás suben distinto: el bastidor cabecea {actual}. Con el morro abajo, el avance disminuye otro tanto y el peso pasa un poco hacia delante; con el morro arriba, el avance aumenta otro tanto y el peso pasa un poco hacia atrás.',
            action: 'Igualar más la parte delantera y la trasera, o volver a ajustar el avance.',
        },
        'roll-axis-too-high': {
            message: 'El eje de balanceo, a {actual}, no queda por debajo del centro de gravedad, a {limit}; la fórmula de la carrocería sobre muelles no vale ahí y su valor se omite.',
        },
        'roll-centre-moves': {
            message: 'El centro de balanceo delantero se desplaza {actual} respecto al suelo, más de {limit}: cambia el equilibrio en curva, y si queda alto levanta el lado exterior del vehículo.',
        },
        'rollout-calibrated': {
            message: 'Todo se calcula con el desarrollo que se deduce de la velocidad medida, {actual} en lugar de {limit}.',
        },
        'rolls-away': {
            message: 'Aparcado así en una pendiente de {actual} no se sujeta: aguanta hasta {limit}, y entonces cede el freno, deslizan los neumáticos o vuelca.',
            action: 'Calzar las ruedas, aparcar atravesado o en llano.',
        },
        'route-asks-more': {
            message: 'El recorrido toma {actual} como media de su calor, y el perfil indicado solo {limit}; la sección se elige por el perfil.',
            action: 'Indicar un perfil que abarque el recorrido.',
        },
        'route-over-rated-torque': {
            message: 'En el conjunto del recorrido el motor trabaja como a {actual} sin fin; su par nominal es de {limit}.',
            action: 'Acortar la relación, descansar más o montar un motor mayor.',
        },
        'route-overheats-cable': {
            message: 'El recorrido solo, repetido una y otra vez, lleva el cable por encima de los {limit} que soportan aislamiento y terminales; si se marca como peligro, a más de 300 °C.',
            action: 'Elegir un cable más grueso e indicar un perfil que abarque lo que pide el recorrido.',
        },
        'runs-away': {
            message: 'El conjunto no se detiene: lo que retienen frenos y neumáticos es menos que lo que empuja.',
            action: 'Llevar menos remolques, o remolques con freno.',
        },
        'sae-cable-over-60-v': {
            message: '{actual} queda fuera del cable de batería SAE J1127, previsto para {limit} nominales.',
            action: 'Elegir un cable cuya propia tensión asignada cubra la tensión a plena carga de la batería.',
        },
        'sag-not-counted': {
            message: 'Sin la resistencia interna de la batería se supone que su tensión se mantiene en carga: velocidad máxima y tiro son límites superiores.',
            action: 'Medir el escalón de tensión con una corriente conocida e indicar la resistencia.',
        },
        'sags-below-controller': {
            message: 'La tensión de la batería cae aquí a {actual}; el controlador funciona a partir de {limit}.',
            action: 'Subir más despacio, o montar una batería con menos resistencia interna.',
        },
        'self-discharge-outside-rule': {
            message: 'La regla de los 10 K se comprobó de 0 a 40 °C; a {actual} la autodescarga es una conjetura.',
        },
        'series-motor-has-no-idle-speed': {
            message: 'Un motor serie sin carga se acelera hasta reventar: una velocidad sin carga no dice nada de la carretera.',
            action: 'Indicar su velocidad en carga, con «En carga» puesto a sí; no hacerlo girar nunca con las ruedas en el aire.',
        },
        'settles-on-springs': {
            message: 'Con este peso, muelles y neumáticos dejan el centro de gravedad a {actual} de lo que dicen las alturas: más alto si va más ligero que al pesarlo, más bajo si va más cargado; calculado con eso.',
        },
        'shop-may-not-disable': {
            message: 'Las normas federales obligan en la primera venta; después, un concesionario, una empresa de alquiler o un taller no pueden inutilizar equipos de seguridad de un vehículo certificado. El uso en carretera es materia de ley estatal: preguntar en el estado correspondiente.',
        },
        'shortfall-on-the-road': {
            message: 'La velocidad del motor vale sin carga: en carretera es normal de un 3 a un 8 % menos que {actual}.',
            action: 'Preguntar en «Prestaciones» qué permite la potencia, o indicar una velocidad medida.',
        },
        'side-imbalance': {
            message: 'Las ruedas de un lado llevan una parte de {actual} del peso, más de {limit}: el vehículo se inclina y vuelca antes hacia ese lado.',
            action: 'Mover masa hacia el otro lado, o sentar más al centro a quien conduce solo.',
        },
        'side-slope-in-band': {
            message: 'En esta ladera de {actual} han volcado vehículos parecidos en los ensayos, desde {limit}; basta la suspensión, un bache o un ocupante que se mueve.',
            action: 'Subir y bajar en línea recta, o ir por otro sitio.',
        },
        'side-slope-slides': {
            message: 'En esta ladera de {actual} los neumáticos deslizan, desde {limit}; lo que los frena hace volcar el vehículo.',
            action: 'Subir y bajar en línea recta, o ir por otro sitio.',
        },
        'side-slope-tips': {
            message: 'En esta ladera de {actual} vuelca, a {limit} y más.',
            action: 'Subir y bajar en línea recta, o ir por otro sitio.',
        },
        'single-tie': {
            message: 'Una sola fila de amarres sostiene la caja e impide que gire; la garganta de una sola soldadura no dice nada de ese momento.',
            action: 'Amarrar la caja a cada larguero en dos puntos.',
        },
        'sits-outside-the-wheels': {
            message: 'Una persona va sentada {actual} fuera de la línea de las ruedas: ¿se indicaron medias vías como vías, o una posición equivocada?',
            action: 'Medir las vías de centro a centro de neumático, e y desde el plano central.',
        },
        'size-below-table': {
            message: 'La sección indicada es más delgada que la primera de la tabla; nada dice qué corriente lleva.',
            action: 'Elegir una sección de la tabla.',
        },
        'size-too-thin': {
            message: 'La sección indicada lleva {limit} de forma permanente y es demasiado delgada para {actual}; el motivo está en «Falla en».',
            action: 'Elegir la sección que proponen los resultados; si no proponen ninguna, encargar el diseño del circuito.',
        },
        'slider-too-short': {
            message: 'Los conductores pequeños, medianos y grandes van cómodos con una guía de {limit} o más; esta tiene {actual}.',
            action: 'Montar una guía más larga, o pedales en dos posiciones.',
        },
        'slides-before-tipping': {
            message: 'En suelo uniforme los neumáticos deslizan con una adherencia de {actual} antes de volcar a {limit}. Eso no es una seguridad: una rodada, un bordillo, una mata o el suelo blando frenan el deslizamiento y lo hacen volcar.',
            action: 'Tomar como límite la velocidad de vuelco, no la de deslizamiento, allí donde las ruedas puedan engancharse.',
        },
        'slope-in-degrees': {
            message: 'El valor se toma en grados, lo que da una pendiente de {actual}; si se quería decir %, escribirlo con %.',
        },
        'slow-moving': {
            message: 'A {actual} entorpece el tráfico: en muchos lugares los vehículos diseñados para menos de {limit} llevan el distintivo de vehículo lento.',
        },
        'slower-than-wanted': {
            message: 'Aquí no mantiene {actual}; se queda en {limit}.',
            action: 'Contar con la velocidad menor.',
        },
        'small-conductor-fuse': {
            message: 'Un fusible de {actual} en esta sección supera los {limit} que admiten las normas de edificios.',
        },
        'small-reading': {
            message: '{actual} está cerca de lo que distingue un medidor corriente; la resistencia de {limit} que resulta es incierta.',
            action: 'Medir con más corriente.',
        },
        'softer-frame': {
            message: 'La misma carga por longitud flexiona ahora los largueros {actual} veces lo de antes: la rigidez cae con la cuarta potencia de la batalla.',
            action: 'Rigidizar los largueros en todo el vano, no solo en las uniones.',
        },
        'spacers-load-bearings': {
            message: 'Los separadores y las ruedas más hacia fuera, {actual} en la vía, flexionan los espárragos y cargan rodamientos de rueda, pivotes y rótulas más de lo previsto; también cambian el tacto de la dirección y el radio de pivotamiento.',
            action: 'Usar separadores centrados en el buje con espárragos de longitud suficiente, respetar los límites de bombeo de la llanta que da el fabricante y revisar rodamientos y tuercas.',
        },
        'speed-not-reached': {
            message: 'En llano no se alcanzan {actual}: se queda en {limit}.',
        },
        'speed-scaled-by-voltage': {
            message: 'La velocidad del motor vale a {limit} y se ha escalado a los {actual} de la batería; controlador, motor y batería tienen que admitirlo.',
            action: 'Comprobar la tensión máxima del controlador y la velocidad que soporta el rotor.',
        },
        'speed-setpoints-off': {
            message: 'El controlador cuenta con una velocidad equivocada; la real es {actual} veces esa. El punto en que empieza la regeneración y la velocidad que se mantiene se desvían en el mismo factor: contar con bajar con los frenos de fricción.',
            action: 'Ajustar los impulsos por vuelta del sensor nuevo antes de confiar en la regeneración.',
        },
        'speedometer-reads-high': {
            message: 'Sin corregir, el velocímetro indica más que la velocidad real, en una parte de {actual}; a 40 km/h se admite {limit}.',
            action: 'Corregir el velocímetro.',
        },
        'spindle-keeps-arms': {
            message: 'Una mangueta de elevación sitúa la rueda más abajo en la propia mangueta; los brazos conservan sus ángulos, así que caída y convergencia se mantienen.',
        },
        'springs-not-believed': {
            message: 'Estos muelles moverían el centro de gravedad {actual}; calculado con las alturas del vehículo como está.',
            action: 'Comprobar la rigidez, que es la de un solo muelle, y la relación de movimiento.',
        },
        'springs-unloaded': {
            message: 'Los muelles de este eje no llevan nada: las ruedas cuelgan o se han levantado del suelo.',
        },
        'squat-implausible': {
            message: 'Con estos muelles el bastidor se movería {actual} en este eje, más que cualquier suspensión de este tipo de vehículo: una rigidez o una carga está mal.',
            action: 'Comprobar la unidad de la rigidez, N/mm o lbf/in, y que es la de un solo muelle.',
        },
        'starts-again': {
            message: 'Con una parte de {actual} restante vuelve a arrancar tras el almacenamiento; las baterías de litio guardadas llenas lo hacen tras ocho meses.',
        },
        'stiffer-springs-cost-comfort': {
            message: 'Una rigidez que sostiene la carga completa va dura en vacío; un muelle auxiliar que entra con la carga, no.',
        },
        'stopped-early': {
            message: 'La descarga se terminó por encima del corte: {actual} es lo mínimo que contiene la batería.',
            action: 'La próxima vez, seguir hasta el corte.',
        },
        'stored-warm': {
            message: '{actual} es más de {limit}: autodescarga y envejecimiento crecen deprisa.',
            action: 'Guardarla en un lugar más fresco.',
        },
        'strand-beyond-diameter': {
            message: 'El conductor de esta sección no cabe en el diámetro indicado; su calor no se calcula.',
            action: 'Indicar el diámetro de esta sección, o «Espesor del aislamiento».',
        },
        'strings-share-current': {
            message: 'Las {actual} ramas en paralelo solo se reparten la corriente mientras sean iguales y su cableado sea igual de largo.',
            action: 'Unirlas solo a la misma tensión, con un fusible por rama; cuando una se abre, las demás lo llevan todo.',
        },
        'sum-of-blocks-differs': {
            message: 'Los bloques suman {actual} y la batería marca {limit}: un signo está mal, un bloque se leyó dos veces o una conexión entre ellos está abierta.',
            action: 'Volver a leer cada bloque con la punta roja en su borne positivo y anotar el signo.',
        },
        'supply-not-checked': {
            message: 'No se comprueba si la base de enchufe y el circuito aguantan; el tiempo solo vale si alimentan el cargador.',
            action: 'Indicar la base de enchufe y las celdas en serie de la batería.',
        },
        'table-below-50-v': {
            message: 'La tabla está publicada para circuitos de menos de {limit}; a {actual} suple una norma que no existe.',
        },
        'taller-tyres-weaken-brakes': {
            message: 'Los neumáticos más altos dan un brazo de palanca más largo contra los mismos frenos: distancia de frenado {actual} frente a {limit} antes.',
            action: 'Frenos mayores, o menos velocidad.',
        },
        'tap-unbalances-pack': {
            message: 'Los bloques de la toma intermedia dan más que los demás: si son de plomo, se vacían antes y el cargador sobrecarga el resto; si son de litio, la gestión de la batería no puede compensarlo y sus celdas son las primeras que bajan del corte.',
            action: 'Alimentar los 12 V con un convertidor conectado a toda la batería y dimensionado para el total.',
        },
        'tap-voltage-too-high': {
            message: 'Llenos, estos bloques dan {actual}; las piezas de 12 V soportan {limit}.',
            action: 'Dos bloques de 6 V o uno de 12 V; con bloques de 8 V, dos ya dan 16 V nominales. Mejor: un convertidor.',
        },
        'temperature-not-counted': {
            message: 'No hay ley publicada para NMC: la capacidad es la de {limit}; a {actual} puede ser menor.',
            action: 'Tomar de la hoja del fabricante la capacidad a esta temperatura.',
        },
        'termination-rating-unknown': {
            message: 'El cable se usa a {actual}; muchos terminales, portafusibles y contactores solo soportan {limit}.',
            action: 'Leer los límites de ambos extremos e indicar el menor en «Límite de los terminales».',
        },
        'thin-wall-buckles': {
            message: 'La pared del larguero es tan delgada que se abolla antes de llegar al límite elástico: mide {actual} veces su espesor de ancho, más de {limit}; las tensiones mostradas no valen.',
            action: 'Elegir una pared más gruesa.',
        },
        'three-wheels': {
            message: 'Tres ruedas: vuelca sobre la línea que va de la rueda única a una de la pareja. Frenar o arrancar en curva lo vuelca con {actual} veces su peso; la curva sola, con {limit}.',
            action: 'Frenar antes de la curva y acelerar después; donde coincidan ambas cosas, tomar como límite el factor más bajo.',
        },
        'throat-beyond-wall': {
            message: 'Una garganta de {actual} sobre una pared de {limit} la perfora, y la pared se desgarra antes que la soldadura.',
            action: 'Hacer el cordón más largo en vez de más grueso, o repartir la carga con una placa.',
        },
        'thrown-out-before-tipping': {
            message: 'Las personas salen despedidas del asiento muy por debajo del límite de vuelco: ha ocurrido en curvas de unos {limit}. Es más grave si la curva planeada llega a ese valor o si alguien va sin cinturón.',
            action: 'Cinturones para todos junto con una estructura antivuelco, sujeciones laterales altas y menos velocidad en curvas cerradas.',
        },
        'tie-rod-too-short': {
            message: 'La bieleta de dirección no llega a su articulación a la altura de marcha elevada: la dirección se trabaría.',
            action: 'Comprobar los puntos medidos; bajar la cremallera o alargar las bieletas con piezas hechas para ello.',
        },
        'tighter-than-full-lock': {
            message: 'El radio planeado de {actual} es mucho más cerrado que el radio de giro de {limit}: no se puede recorrer sin deslizar.',
        },
        'timeout-too-short': {
            message: 'Tarda {actual} en llegar a la tensión de cierre, más que el tiempo límite de {limit}: el contactor cierra sobre un condensador que no está lleno, o no cierra nunca.',
            action: 'Elegir una resistencia menor o un tiempo límite mayor.',
        },
        'tips-at-rest': {
            message: 'El centro de gravedad queda fuera de la línea que une las ruedas de un lado: vuelca parado.',
            action: 'Comprobar las posiciones: y se cuenta hacia la derecha desde el plano central.',
        },
        'tips-before-sliding': {
            message: 'Vuelca, o puede volcar, antes de deslizar: la adherencia de {actual} basta para volcarlo o cae en la banda que respaldan los ensayos de vehículos parecidos.',
            action: 'Mantener velocidad y giro de la dirección muy por debajo de ese límite, y limitar la velocidad en curvas cerradas.',
        },
        'tips-forward': {
            message: 'El centro de gravedad queda por delante del eje delantero, en {actual}: las ruedas traseras se levantan del suelo.',
            action: 'Comprobar las posiciones: x se cuenta hacia atrás desde el eje delantero.',
        },
        'tips-rearward': {
            message: 'El centro de gravedad queda por detrás del eje trasero, en {actual} con una batalla de {limit}: las ruedas delanteras se levantan del suelo.',
            action: 'Mover masa hacia delante antes de bajar el vehículo de los caballetes.',
        },
        'tips-sideways': {
            message: 'El centro de gravedad queda fuera de las ruedas de un lado, que llevan {actual} veces el peso: las ruedas del otro lado se levantan del suelo.',
            action: 'Comprobar las posiciones: y se cuenta hacia la derecha desde el plano central.',
        },
        'toe-change': {
            message: 'La convergencia de cada rueda delantera cambia en {actual}; {limit} ya desgasta los neumáticos e inquieta la dirección.',
            action: 'Volver a ajustar la convergencia antes de circular, y vigilarla a lo largo del recorrido.',
        },
        'too-many-blocks-in-series': {
            message: 'Hay {actual} bloques en serie y su fabricante admite {limit}: cuando uno se abre, sus transistores reciben la tensión de toda la batería y fallan en cortocircuito.',
            action: 'Una sola batería hecha para esta tensión, con una sola gestión para todas las celdas.',
        },
        'too-steep': {
            message: 'Aquí no arranca: una pendiente de {actual}.',
            action: 'Menos carga, una relación mayor o más par; nunca intentarlo con el vehículo lanzado.',
        },
        'towed-mass-over-rule': {
            message: 'Los remolques suman {actual}; por regla, un vehículo de esta masa remolca en llano {limit} como mucho con remolques así, con freno o sin él.',
            action: 'Llevar menos remolques, o remolques con freno.',
        },
        'towing-passes-rotor-limit': {
            message: 'Remolcado o rodando cuesta abajo por encima de {limit}, el rotor supera su límite, incluso con la tracción apagada.',
            action: 'Remolcar más despacio, levantar las ruedas motrices o sacar los semiejes.',
        },
        'track-change': {
            message: 'La vía delantera cambia en {actual} al oscilar los brazos; los neumáticos se arrastran esa distancia en cada carrera.',
            action: 'Comprobar el neumático contra carrocería y brazos con la dirección a tope.',
        },
        'tracks-unlike': {
            message: 'La vía más estrecha es solo una parte de {actual} de la más ancha: ¿se midió desde el centro del vehículo?',
            action: 'Medir de centro a centro de neumático.',
        },
        'trailer-wheels-lock': {
            message: 'Los frenos de los remolques pueden más que el agarre de sus neumáticos: las ruedas se bloquean y el remolque se cruza; solo se cuenta lo que retienen los neumáticos.',
        },
        'travel-after-lift': {
            message: 'El recorrido libre de este eje se toma como se midió, le haya hecho lo que le haya hecho la elevación: con los muelles elevados y los topes donde estaban, amortiguadores, rótulas y neumáticos pasan a hacer de tope.',
            action: 'Medirlo en el vehículo elevado, y ver que amortiguador y latiguillo de freno llegan a ambos extremos del recorrido.',
        },
        'travel-short': {
            message: 'Del recorrido de compresión de este eje quedan {actual}, menos de dos tercios del que había.',
            action: 'Montar muelles con la «Rigidez para dejarlo igual», o un muelle auxiliar que entre con la carga.',
        },
        'true-speed-above-shown': {
            message: 'Sin corregir, el velocímetro indica ahora menos que la velocidad real, en una parte de {actual}; con ella sube todo límite fijado por la velocidad del motor.',
            action: 'Corregir el velocímetro y ajustar de nuevo todos los límites de velocidad; un vehículo más rápido puede pasar a otra clase legal.',
        },
        'turning-radius-short': {
            message: 'Un radio de giro de {actual} con una batalla de {limit} no es la trayectoria de una rueda delantera exterior; se toma como la del centro de gravedad.',
            action: 'Medir el radio, no el diámetro, de la huella que deja la rueda delantera exterior.',
        },
        'turns-wider': {
            message: 'Con el mismo ángulo de dirección el radio de giro crece a {actual} desde {limit}, y las ruedas traseras se meten más hacia dentro; un camino o una puerta que bastaban pueden quedar estrechos.',
            action: 'Marcar con tiza la curva más cerrada del recorrido y recorrerla antes de pintar.',
        },
        'tyre-beyond-guidance': {
            message: 'La subida por los neumáticos cambia la altura en {actual}; las guías para carretera se paran en {limit} sin certificación.',
            action: 'Hacer revisar suspensión, frenos y dirección por alguien autorizado; conservar al menos dos tercios del recorrido en cada sentido.',
        },
        'tyre-not-for-road': {
            message: 'Un neumático con la marca NHS no es para carretera y queda fuera de las homologaciones de neumáticos de carretera.',
            action: 'Usarlo solo fuera de la vía pública, o montar un neumático con índice de carga y símbolo de velocidad.',
        },
        'tyre-overloaded': {
            message: 'Cada neumático de este eje lleva {actual} y puede llevar {limit}.',
            action: 'Montar neumáticos que lleven el eje como está ahora, o quitarle peso.',
        },
        'tyres-not-told-apart': {
            message: 'No se conoce la rigidez de los neumáticos de este eje. Calculado solo con los muelles, el hundimiento no incluye los neumáticos, así que el vehículo baja un poco más; a partir de un descenso medido, el recorrido usado incluye también el suyo.',
            action: 'Medir cuánto bajan los centros de rueda bajo una masa conocida.',
        },
        'tyres-slip-pulling-away': {
            message: 'A fondo desde parado los neumáticos motrices patinan: transmiten {limit}.',
        },
        'unbraked-on-a-grade': {
            message: 'Los remolques sin freno empujan cuesta abajo; la regla de la masa remolcada solo vale en llano.',
            action: 'Atenerse a la masa remolcada que soporta el frenado, no a la regla.',
        },
        'voltage-drop-not-checked': {
            message: 'Sin la tensión no se pueden juzgar ni la caída ni el fusible.',
            action: 'Indicar la tensión del circuito, o la química y las celdas en serie de la batería.',
        },
        'voltage-matches-several-counts': {
            message: 'Esta tensión de bloque se dice de varios números de celdas de esta química: entre unos y otros hay {actual} a plena carga, y decide el número de celdas, no la etiqueta.',
            action: 'Contar las celdas, o medir al final de una carga completa y dividir por la tensión de una celda llena de esta química.',
        },
        'voltage-not-of-outlet': {
            message: '{actual} queda lejos de los {limit} de la base de enchufe indicada: uno de los dos datos está mal, y con él todas las cifras de red de aquí.',
            action: 'Medir en la base de enchufe o indicar la que corresponde.',
        },
        'weld-overloaded': {
            message: 'La soldadura del larguero lleva {actual} en la garganta, más que su resistencia de cálculo de {limit}.',
            action: 'Hacer el cordón más largo; un soldador cualificado decide cómo.',
        },
        'weld-too-short': {
            message: 'La soldadura mide {actual} sin sus extremos; por debajo de {limit} no se debe contar con ella.',
            action: 'Soldar un cordón más largo.',
        },
        'wheel-disagrees': {
            message: 'La velocidad medida corresponde a un desarrollo de {actual}, no de {limit}: deslizamiento, otra relación, otro régimen del motor o una unidad está mal.',
            action: 'Marcar el neumático y el suelo, rodar una vuelta con el conductor a bordo y enviar el desarrollo; contar los dientes.',
        },
        'wheels-slip': {
            message: 'Las ruedas motrices patinan: no llevan carga, o se les pide más agarre del que tienen.',
            action: 'Remolcar menos, o poner lastre sobre el eje motriz dentro de su carga admisible.',
        },
        'which-side-of-the-controller': {
            message: '{actual} es el lado del motor; lo que da la batería es el lado de la batería, y es menos con acelerador parcial.',
            action: 'Leer en la hoja del controlador el límite del lado de la batería e indicarlo en «Corriente de batería».',
        },
        'winner-is-sensitive': {
            message: 'Otra opción resulta más barata con un cambio pequeño de un solo dato; cuál y cuánto está en «Sensibilidad».',
            action: 'Averiguar ese dato antes de comprar.',
        },
    },
    cautions: {
        'align-after-lift': 'Caída, avance y convergencia se miden y se ajustan de nuevo después de cualquier elevación, antes de conducir el vehículo.',
        'arithmetic-is-not-a-test': 'Cálculo estático de un vehículo rígido en suelo firme y uniforme. Neumáticos, muelles, dirección, rodadas y personas que se mueven le quitan más. No es una calificación ni una homologación; solo un ensayo en plataforma basculante y en pista muestra lo que aguanta un vehículo.',
        'blocked-springs': 'Bloquear los muelles por completo, soltar los frenos, calzar solo de lado las ruedas que quedan abajo y mantener a todos fuera de debajo y de los lados del vehículo levantado. Los muelles sin bloquear son el mayor error de este método.',
        'blocks-on-leaf-springs': 'Los tacos son de metal, centrados por el orificio de guía y el tornillo central; los abarcones no bajan más que el borde de la llanta y se reaprietan después de la primera marcha (guía sobre suspensión del gobierno de Australia Meridional). Un taco más alto deja que el eje se retuerza más con el par.',
        'brake-to-its-stop': 'El conductor más pequeño tiene que pisar el freno hasta su tope con el cinturón puesto, y el más grande tiene que levantar el pie por encima sin dar en el volante ni en el salpicadero.',
        brakes: 'De los frenos dependen vidas. Encargar sus cambios y su prueba a alguien formado para ello, atenerse a las piezas y los límites del fabricante, y probarlos primero a paso de persona en terreno llano y despejado. Calzar las ruedas antes de trabajar en pendiente.',
        'charger-profile': 'La tensión final y el perfil del cargador tienen que ser los del fabricante de la batería para esta química y este número de celdas; los tiempos de aquí lo dan por hecho.',
        'check-recalls': 'Asientos traseros, manguetas de dirección y brazos de suspensión de estos vehículos han sido llamados a revisión tal como se entregaron. Consultar la lista de llamadas a revisión del fabricante antes de añadir carga, elevación o ruedas más hacia fuera.',
        'corroded-metal': 'El ácido y el óxido se comen soportes y largueros desde dentro. Medir la pared que queda y cortar hasta el metal sano: un parche sobre óxido delgado no sujeta nada. Sellar el tubo después de soldar.',
        'dc-arc': 'La corriente continua no pasa por cero, que es lo que apaga un arco. Aislar la batería antes de trabajar en el contactor o en la resistencia; después de eso un condensador sigue cargado: medirlo y descargarlo a través de una resistencia, nunca con un cortocircuito.',
        descent: 'En una cuesta los frenos de fricción tienen que retener el vehículo solos en todo momento. Probarlos antes de la cima, bajar despacio y encargar el trabajo en los frenos y en el circuito de tracción a alguien formado para ello; los límites de los fabricantes obligan.',
        disconnecting: 'Apagar el cargador antes de conectar o quitar sus cables: un arco de corriente continua no se apaga solo.',
        'engineer-and-welder': 'Un cálculo de vigas no aprueba nada. Un ingeniero autorizado tiene que comprobar un bastidor cortado, alargado o prolongado, y un soldador cualificado tiene que soldarlo.',
        'extension-cord': 'Desenrollar del todo el alargador, tenderlo despejado, no empalmar alargadores, mantenerlo fuera de la humedad. No prolongar nunca un cable de carga que lleve la protección en el propio cable.',
        'first-drive': 'Hacer la primera marcha con una tracción modificada en solitario, despacio, en llano, con espacio para parar y con alguien que pueda abrir el interruptor principal; no hacer girar nunca un motor serie con las ruedas en el aire.',
        'fuse-place': 'Poner el fusible junto a la batería, a no más de 175 mm (7 in) de ella a lo largo del cable, o 1,02 m (40 in) donde el cable va en funda en todo su recorrido (33 CFR 183.455(b)). Un calibre en amperios dice qué lleva una pieza, no qué conecta o corta.',
        'gas-at-the-post': 'Un borne caliente enciende el hidrógeno: no hacer nunca chispas, ni soldar, ni amolar junto a baterías de plomo, y airear antes la caja.',
        'heat-affected-zone': 'Junto a una soldadura, el tubo conformado en frío, tratado térmicamente o galvanizado es más débil y más frágil de lo que dice la tabla; el aluminio pierde cerca de la mitad. Mantener las soldaduras fuera de los lugares de mayor momento y no soldar nunca en recto de lado a lado de un larguero.',
        'hot-resistor': 'Una resistencia de precarga que se queda en serie se calienta lo bastante para quemar lo que la toca. Montarla sobre metal, lejos del cableado y de las salidas de gases de una batería.',
        hydrogen: 'Las celdas de plomo desprenden hidrógeno, que explota a partir del 4 % en el aire, y contienen ácido: ventilar, sin chispas, y usar protección ocular y guantes con el densímetro.',
        'isolate-first': 'Los milivoltios se miden en carga, con puntas aisladas y sin anillos ni reloj; una unión solo se abre con la batería aislada. La corriente continua no pasa por cero, que es lo que apaga un arco.',
        joints: 'Estas cifras son solo del cable. Los cables cortos fallan en los extremos: engastar y apretar como dice el fabricante, y medir la caída en cada unión en carga; 10 miliohmios a 300 A son 900 W en un solo terminal.',
        'life-is-a-guess': 'La vida es lo que más decide y lo que menos se conoce: una garantía no es una vida, una afirmación no es una medida, y un cargador sin límite de tensión mata pronto el plomo (encuesta de campo a usuarios de vehículos, 2020). Preguntar con la vida más corta y la más larga que se crean posibles.',
        'lifting-a-pack': 'Una batería pesa y está bajo tensión: levantarla con un polipasto de carga suficiente, cubrir sus terminales, usar herramientas aisladas, quitarse las joyas. Tiene que quedar sujeta de modo que no se mueva en un choque o un vuelco.',
        lithium: 'Las celdas del interior de una batería de litio son cosa de su fabricante o de alguien formado: leerlas con su gestión de la batería, no abrir la carcasa.',
        'lithium-charging': 'Cargar litio solo con su gestión de la batería en funcionamiento y a una temperatura de celda que el fabricante admita.',
        'load-test': 'Una prueba de carga con el freno pisado calienta motor y controlador en segundos: ruedas calzadas, nadie delante del vehículo, unos segundos cada vez.',
        'local-law-decides': 'Esto compara cifras con umbrales publicados; no es una homologación ni asesoramiento jurídico. La ley estatal, provincial, nacional y local decide dónde puede circular un vehículo así, quién puede conducirlo y qué tiene que llevar. Preguntar antes de construir.',
        'mains-wiring': 'La base de enchufe, el circuito y el reglamento local deciden cuánto se puede tomar; las bases viejas, gastadas o flojas admiten menos. La instalación de red la juzga y la cambia un electricista autorizado.',
        maker: 'Algunos controladores hacen la precarga por sí mismos, o en otros terminales. Deciden el esquema de conexiones y los límites del fabricante del controlador.',
        'maker-ratings': 'Los límites del fabricante para ejes, neumáticos y vehículo obligan, diga lo que diga el cálculo. Pesar el vehículo acabado, con el conductor a bordo, antes de conducirlo.',
        'makers-ratings': 'Lo que encaja aquí encaja con los números indicados. Obligan los límites y las instrucciones de los fabricantes, y también el reglamento local; la instalación de red es de un electricista autorizado.',
        'no-road-car-rating': 'Aquí no se usan las calificaciones de vuelco de los turismos: se ajustaron a turismos y no tienen valor con los factores de estos vehículos.',
        'recall-check': 'Estructuras de asiento, manguetas y brazos de fábrica han fallado sin ninguna carga añadida. Buscar el vehículo en la lista de llamadas a revisión antes de añadir masa, altura o longitud.',
        'residual-current-protection': 'Usar una base de enchufe con protección diferencial (GFCI, RCD) y no puentearla nunca. Un disparo de esta y un disparo por sobrecarga son averías distintas.',
        'ride-height': 'Una batería más ligera o más pesada cambia cómo descansa el vehículo sobre sus muelles, y con ello la alineación y el despeje. Comprobarlos después del cambio y pesar el vehículo.',
        rules: 'No se conoce ninguna norma numérica para cables de vehículos fuera de carretera; las tablas son normas de embarcaciones y edificios usadas en su lugar. Deciden los límites del fabricante, el reglamento local y un electricista cualificado.',
        'spring-work': 'Un muelle en carga y un vehículo sobre un gato pueden matar. Apoyar el bastidor en caballetes, dejar colgar libres los muelles antes de soltar nada y respetar los límites del fabricante de muelles, eje y neumáticos: unos muelles más rígidos no elevan ninguno.',
        'stops-shafts-lines': 'Comprobar en extensión total y en compresión total: los topes siguen actuando antes que rótulas, juntas de los semiejes, muelles o neumáticos; los semiejes quedan dentro de los ángulos de sus fabricantes; conductos de freno, cables y dirección llegan sin tirantez.',
        storage: 'Desconectar lo que consume corriente, mantener cubiertos los terminales, guardar en un lugar seco, fresco y lejos de lo que arde, y seguir las instrucciones de almacenamiento del fabricante. Leer la tensión de cada bloque, y el estado de carga que da la gestión, antes de volver a cargar.',
        'survey-not-customers': 'Las tallas son de soldados y las líneas de asiento, de camioneros: más jóvenes y en mejor forma que la mayoría de los dueños, y no los clientes del taller. Los percentiles no se suman en un mismo cuerpo. Sentar a las personas en el asiento antes de soldar nada.',
        torque: 'Apretar al par del fabricante y otra vez tras las primeras semanas: un manual de servicio da 11 N m (8 lbf ft) para un tipo de borne. Un cable que se deja mal funde el borne; los fabricantes no lo consideran caso de garantía.',
        'towing-limits': 'El límite de remolque del fabricante obliga, y un vehículo sin él no puede remolcar. Usar un enganche y una cadena de seguridad de resistencia conocida, enganchar solo con el freno de estacionamiento puesto y sin nadie en medio, no llevar a nadie en un remolque y probar los frenos en llano antes de cualquier pendiente.',
        'unattended-charging': 'No cargar sin vigilancia en interiores con un cargador o una batería que no se conozcan. Un magnetotérmico adecuado no hace seguro un cargador: no ve el calor dentro de un cargador, un fusible o una clavija. Tocar la clavija a los 5, 15 y 60 minutos y parar si se nota calor. Tener un detector de humo.',
        'verify-by-test': 'Un cambio de altura de marcha y un cambio de neumático actúan cada uno a su manera: SAE J2492 pide analizar ambos y demostrarlos con ensayos. Frenado, dirección y estabilidad se prueban primero a paso de persona; deciden los límites del fabricante y la ley local.',
        'welding-duty': 'Los valores de servicio del cable de soldadura son de 1,5 a 2 veces su corriente continua. No leerlos nunca como servicio continuo.',
        'welding-near-packs': 'Desconectar y sacar la batería antes de soldar o amolar: el hidrógeno sobre las celdas de plomo abierto explota, y las corrientes vagabundas y el calor estropean las celdas de litio y la electrónica. Poner la masa del equipo de soldar en la propia unión.',
    },
    assumptions: {
        'a-seat-for-everybody': 'un asiento por cada ocupante indicado',
        'all-sprung': 'se supone que toda la carga del eje va sobre sus muelles: lo más que puede subir el centro de gravedad y lo más baja que puede ser la frecuencia de suspensión',
        'allowed-drop-share': '3 %, como en los circuitos que importan',
        ambient: 'un taller fresco: cuanto más frío el aire, mayor el calentamiento que se traslada a otras corrientes',
        'ambient-of-circuit': 'el de su circuito',
        'ampacity-table': 'escrita para cable de batería; sustituye a una norma para vehículos fuera de carretera',
        'bare-on-centre-plane': 'un vehículo pesado sin distinguir sus lados se toma con tanto peso a la izquierda como a la derecha',
        'battery-efficiency': 'el usual de la química; sin química indicada, no se pierde nada',
        'battery-side': 'antes del controlador, salvo que se indique que está detrás',
        'block-motion-ratio': 'un taco se mueve con el eje',
        'box-in-the-middle': 'sin posición lateral indicada se toma en el medio',
        'braked-by-its-force': 'se indicó una fuerza de frenado',
        'built-in': 'los largueros se toman empotrados en el último travesaño; un bastidor que cede ahí deja bajar más la caja',
        bundled: 'solo los dos conductores de este circuito',
        'calendar-life': 'vida en servicio usual de la química',
        'carries-both': 'un vehículo de trabajo con asientos lleva personas y mercancías',
        'charge-factor': 'carga que se mete por cada carga sacada, la usual de la química',
        'charge-from-empty': 'desde vacía, la carga más larga que hay',
        'charge-to-full': 'hasta llena',
        'charger-efficiency': 'el usual del tipo de cargador o de la química; donde nada lo indica, no se pierde nada',
        'charger-power-factor': 'el usual del tipo de cargador',
        'charger-type': 'lo que se vende hoy; un cargador con un transformador pesado es «de transformador»',
        'circuit-not-shared': 'nada más funciona en el circuito; el de un garaje alimenta a menudo un congelador o el motor de la puerta',
        'circuit-voltage': 'tensión nominal de la batería, con sus celdas en serie',
        'closing-share': 'el contactor cierra entre el 95 y el 98 % de la tensión de la batería',
        'coil-supply': 'la más próxima en tensión, entre batería y convertidor',
        'cold-resistance': 'una batería vacía y helada tiene más resistencia, y con ella la corriente de falta es mínima',
        'constant-voltage-time': 'fase a tensión constante hasta llena, la usual de la química',
        'continuous-share': 'una carga de tres horas o más toma como mucho cuatro quintos del calibre',
        'converter-efficiency': 'el usual de un convertidor conmutado a media carga',
        'cord-temperature': 'lo más caliente que puede trabajar un alargador sin marcar, de modo que la caída se calcula por exceso',
        'cut-midway': 'el bastidor se cortó a media distancia entre los ejes',
        'cycle-life': 'la usual de la química',
        'days-between': 'del primer día al último',
        'diode-voltage': 'tensión directa de un diodo de silicio',
        'drag-area': 'vehículo abierto con techo y parabrisas, de 1,0 a 1,8 m²; importa poco por debajo de 25 km/h',
        'drive-efficiency': 'controlador, motor y eje juntos, de 0,60 a 0,85',
        'equalising-current': 'la usual para la capacidad',
        'fixed-seat': 'un asiento sin guía',
        'four-wheels': 'casi todos los vehículos de este tipo',
        friction: 'asfalto u hormigón seco, o la superficie indicada, seca',
        'fuse-temperature': 'los calibres y las curvas valen a ella; en un compartimento caliente un fusible lleva menos',
        'gear-efficiency': 'el de la reducción, del eje del motor a la rueda; nunca menor que el de toda la transmisión',
        'gentle-start': 'un arranque suave: al paso de una persona en unos cuatro segundos',
        'height-as-driven': 'vehículo como se pesó, con piezas y ocupantes, con su elevación y sus neumáticos',
        'hill-as-ground': 'la pendiente del suelo, cuesta abajo',
        'insulation-rating': 'el extremo prudente del cable de batería usual; muchos llevan marcados 90 o 105 °C',
        'insulation-thickness': 'una pared fina; el cable de batería tiene cerca del doble y trabaja más frío',
        'laden-on-centre-plane': 'un vehículo medido sin lado conocido se toma con tanto peso a la izquierda como a la derecha',
        'least-coil-voltage': 'parte usual de la tensión nominal de la bobina',
        level: 'un tramo sin pendiente indicada es llano',
        'load-in-the-middle': 'sin posición lateral indicada se toma en el medio',
        'loaded-radius': '0,96 veces la mitad del diámetro libre',
        location: 'aire libre a los 30 °C para los que están impresas las tablas; un compartimento caliente es «compartimento del motor»',
        'lowest-temperature': 'tan baja como la media: indicar la de la noche más fría',
        'mains-voltage': 'tensión nominal de la base de enchufe',
        'mass-as-driven': 'vehículo como se pesó, con piezas y ocupantes',
        'mass-over-axle': 'se supone que la masa estaba justo encima del eje',
        'measured-as-driven': 'se supone que la frenada se midió con la masa en marcha',
        'measured-at-wheel': 'los kits se venden por la elevación que dan sobre la rueda',
        'measured-on-level': 'se supone que la frenada se midió en llano',
        'most-coil-voltage': 'parte usual de la tensión nominal de la bobina',
        'no-accessories': 'nada más a bordo si no se indica; solo las luces toman de 50 a 150 W',
        'no-discount': 'el dinero del año que viene vale como el de hoy: una simple suma',
        'no-hitch-load': 'como en un remolque de cuatro ruedas; uno de un eje pone en el enganche cerca de una décima parte de su peso',
        'no-regeneration': 'no vuelve nada, salvo que se sepa que la tracción regenera',
        'no-reserve': 'no se guarda nada si no se indica',
        'not-lowered': 'el asiento conserva su altura',
        'not-moved-back': 'el asiento se queda donde está',
        'nothing-left-on': 'un interruptor general está abierto; si no, convertidores, indicadores y gestión de la batería toman decenas de miliamperios',
        'occupant-mass': 'masa usual de una persona a bordo',
        'on-centre-plane': 'una pieza sin posición lateral indicada se toma en el medio',
        'on-public-roads': 'el lugar que más exige a un vehículo',
        'one-string': 'una rama si no se indican más',
        'one-time-constant': 'el tiempo se toma como la constante de tiempo',
        'one-trailer': 'un remolque si no se indican más',
        'pack-as-new': 'una batería que da su capacidad nominal; los fabricantes cuentan 0,8 como fin de vida',
        'pack-temperature': 'una batería a temperatura de interior',
        'parked-on-one-axle': 'un freno de estacionamiento suele sujetar las ruedas traseras, o las únicas que frenan',
        'pedals-stay': 'los pedales se quedan donde están',
        'peukert-exponent': 'el usual de la química; crece con la edad',
        'position-as-driven': 'vehículo como se pesó, con piezas y ocupantes, con su elevación y sus neumáticos',
        'prop-foot': 'el pie está debajo del último travesaño',
        'rails-either-side': 'una carga en medio de dos largueros se reparte por igual, estén donde estén',
        'rated-hours': 'régimen en horas con el que suele darse la capacidad de la química',
        'rated-temperature': 'una batería que no está fría: la temperatura a la que se dan las capacidades',
        'rated-torque': 'potencia nominal entre velocidad nominal de la placa de características',
        'rating-of-circuit': 'el menor de los límites de terminales y aislamiento del circuito; lo que no se indica cuenta como 75 °C',
        'reaction-time': 'un conductor preparado; el proyecto de carreteras cuenta con 2,5 s (AASHTO)',
        'rear-driven': 'el eje trasero mueve la mayoría de los vehículos de esta clase',
        'recharge-at': 'lo usual en la química',
        'roll-gradient-from-springs': 'muelles que se suponen en las ruedas, sin barras estabilizadoras; las ballestas están más juntas, y la carrocería balancea más',
        'rolling-resistance': 'la usual en la superficie; en asfalto puede salir de la presión del neumático menos inflado y de la velocidad',
        rollout: 'distancia rodada en una vuelta, 3,05 veces el diámetro libre en un neumático radial y 2,99 en cualquier otro',
        'rollout-calibrated': 'el que se deduce de la velocidad medida y la del motor en el mismo momento',
        'rollout-of-free-diameter': 'perímetro del diámetro libre, lo más que puede rodar; un neumático con aire rueda bajo carga del 3 al 5 % menos: conviene medirlo',
        'rotating-mass': 'lo que añaden ruedas, engranajes y rotor cuando cambia la velocidad',
        'rough-ground': 'estos vehículos salen de la carretera: el extremo alto de los factores publicados',
        'safety-factor': 'sobre el límite elástico, con el factor dinámico o, si no lo hay, con el peso en reposo solo',
        'same-deflection': 'se supone que ambos neumáticos se aplastan igual, de modo que la mitad del cambio de diámetro es el cambio de radio bajo carga',
        'self-discharge': 'la usual de la química',
        'shackle-motion-ratio': 'una gemela se mueve el doble que el eje',
        'sharp-corners': 'esquinas vivas; un tubo real conformado en frío es del 3 al 8 % más débil',
        'size-series': 'la serie en la que están impresas las tablas',
        'speed-as-planned': 'se mantiene la velocidad planeada',
        'speed-without-load': 'si no se indica, la velocidad de un motor se toma sin carga: en marcha es menor',
        'spring-moves-with-wheel': 'una ballesta sobre el eje se mueve como la rueda; un muelle sobre un brazo se mueve menos y hay que indicarlo',
        'starting-factor': 'el primer movimiento pide el doble que la rodadura',
        'steel-modulus': 'largueros de acero',
        'storage-temperature': 'una habitación; con más frío se conserva más tiempo, con más calor menos',
        'stored-full': 'una batería se carga antes de guardarla',
        'straight-train': 'el conjunto va recto: en una curva los remolques empujan además la trasera hacia un lado',
        'suppressor-voltage': 'el doble de la alimentación, para una liberación rápida',
        surface: 'una carretera corriente si no se indica otra',
        'suspension-lift': 'una elevación de tipo no indicado se toma como la que sube el bastidor sobre sus muelles',
        'termination-rating': 'en un circuito, terminales que soportan lo mismo que el aislamiento, pues ninguna norma clasifica los engastados sobre espárragos; en una unión, lo que soportan muchos terminales',
        timeout: 'el triple del tiempo esperado o, sin resistencia indicada, un segundo entre llave y contactor',
        'top-speed': 'la velocidad que el controlador está ajustado para mantener, o la que se midió',
        'torsion-factor': 'el extremo alto de los factores publicados',
        'trailer-rolls-as-vehicle': 'se supone que las ruedas de los remolques ruedan como las del vehículo; las giratorias pequeñas y duras ruedan peor',
        'two-springs': 'un muelle a cada lado',
        'unbraked-trailer': 'un remolque sin frenos si no se indican',
        'unladen-mass': 'vehículo como se pesó, con las piezas que no son carga útil',
        'usable-share': 'uso diario que la química aguanta mucho tiempo',
        'usual-cut-off': 'la descarga terminó en el corte usual',
        'walking-pace': 'el paso vivo de una persona',
        'wall-under-nominal': 'la pared puede quedar esta parte por debajo de la nominal',
        'wheel-radius': 'radio bajo carga del neumático con el que se pesó',
        'wheelbase-before': 'el chasis está descrito como era antes del alargamiento',
    },
};
